using System.Security.Cryptography;
using MeltShop.Records;
using MeltShop.Records.People;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.People;

/// <summary>A password that an administrator gives to somebody. Two know it, so that person chooses another when they sign in.</summary>
public static class StartPassword
{
    /// <summary>The claim of a person who has not chosen a password of their own yet.</summary>
    public const string Claim = "startPassword";

    // Letters and digits that are not mistaken for one another.
    private const string Signs = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";
    private const int Length = 12;

    /// <summary>A random one that can be read out and typed.</summary>
    public static string Make() => RandomNumberGenerator.GetString(Signs, Length);

    internal static void Mark(RecordsContext db, Person person) =>
        db.Add(new IdentityUserClaim<long> { UserId = person.Id, ClaimType = Claim, ClaimValue = "yes" });

    internal static Task Unmark(RecordsContext db, long personId, CancellationToken cancellation) =>
        db.UserClaims.Where(c => c.UserId == personId && c.ClaimType == Claim).ExecuteDeleteAsync(cancellation);
}
