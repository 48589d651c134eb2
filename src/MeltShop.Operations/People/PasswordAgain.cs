using System.Collections.Concurrent;
using MeltShop.Metallurgy;
using MeltShop.Records;
using MeltShop.Records.People;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.People;

/// <summary>
/// Asks somebody who is signed in for their password again, before what nobody may do by a slip or in another's name. A few wrong ones
/// close it for some minutes: at a shared station a person may be named who is not there.
/// </summary>
public sealed class PasswordAgain(TimeProvider time)
{
    /// <summary>Wrong passwords of one person within <see cref="Within"/> after which no other is looked at.</summary>
    public const int MostWrong = 5;

    public static readonly TimeSpan Within = TimeSpan.FromMinutes(5);

    private readonly ConcurrentDictionary<long, IReadOnlyList<DateTimeOffset>> wrong = new();

    /// <returns>What stands against it, at the path <c>password</c>; null where it is theirs.</returns>
    public async Task<Finding?> Against(RecordsContext db, long personId, string? password, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(db);
        if (string.IsNullOrEmpty(password)) return new("password", "password.missing");
        if (Recent(personId).Count >= MostWrong) return new("password", "password.tooOften", Within.TotalMinutes);
        var person = await db.Users.AsNoTracking().SingleOrDefaultAsync(p => p.Id == personId && p.IsActive, cancellation);
        if (person?.PasswordHash is { } hash && new PasswordHasher<Person>().VerifyHashedPassword(person, hash, password) != PasswordVerificationResult.Failed)
        {
            return null;
        }

        wrong.AddOrUpdate(personId, _ => [time.GetUtcNow()], (_, _) => [.. Recent(personId), time.GetUtcNow()]);
        return new("password", "password.wrong");
    }

    private IReadOnlyList<DateTimeOffset> Recent(long personId) =>
        wrong.TryGetValue(personId, out var times) ? [.. times.Where(at => at > time.GetUtcNow() - Within)] : [];
}
