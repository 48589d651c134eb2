using System.Security.Cryptography;
using System.Text;
using MeltShop.Operations;
using MeltShop.Records;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Api.Weighings;

/// <summary>What the desks of scales share: the key of an entry by the sender's own name of it, and the person who stands at the scale.</summary>
internal static class ScaleSender
{
    /// <summary>The same name from the same sender is the same entry, for ever.</summary>
    /// <param name="kind">What is sent: <c>weighing</c>, <c>tap</c>.</param>
    public static Guid KeyOf(string kind, string station, string id) => new(SHA256.HashData(Encoding.UTF8.GetBytes($"{kind}\n{station}\n{id}")).AsSpan(0, 16));

    public static async Task<Acting?> Person(RecordsContext db, string station, string name, CancellationToken cancellation)
    {
#pragma warning disable CA1304, CA1311 // as sign-in keeps names
        var upper = name.ToUpperInvariant();
#pragma warning restore CA1304, CA1311
        var person = await db.Users.AsNoTracking().SingleOrDefaultAsync(p => p.NormalizedUserName == upper && p.IsActive, cancellation);
        if (person is null) return null;
        var roles = await (
            from held in db.UserRoles
            join role in db.Roles on held.RoleId equals role.Id
            where held.UserId == person.Id
            select role.Name!).ToListAsync(cancellation);
        return new Acting(person.Id, person.DisplayName, station, roles);
    }
}
