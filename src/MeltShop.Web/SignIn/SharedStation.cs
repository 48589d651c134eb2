using System.Security.Claims;
using MeltShop.Records.People;

namespace MeltShop.Web.SignIn;

/// <summary>
/// A device that several people use. Somebody signs in with a password once a shift; then a PIN changes the person, and after a
/// while without a touch nobody is named. What a PIN cannot be trusted with, it does not open.
/// </summary>
internal static class SharedStation
{
    /// <summary>The claim of a shared station; its value says how its person was named.</summary>
    public const string Claim = "shared";

    public const string ByPassword = "password", ByPin = "pin", Nobody = "nobody";

    private static readonly string[] Kept = [PersonClaims.Station, Claim];

    public static bool IsShared(this ClaimsPrincipal user) => user.HasClaim(claim => claim.Type == Claim);

    /// <summary>The station is signed in, but nobody stands at it.</summary>
    public static bool IsNobody(this ClaimsPrincipal user) => user.HasClaim(Claim, Nobody);

    /// <summary>Whose entries are made here: nobody's number is 0; null where nobody is signed in.</summary>
    public static string? Named(this ClaimsPrincipal user) => user.IsNobody() ? "0" : user.FindFirstValue(PersonClaims.Id);

    /// <summary>Gives a person's principal the station of another one.</summary>
    public static void MoveTo(this ClaimsPrincipal person, ClaimsPrincipal station, string? named = null)
    {
        var identity = person.Identities.First();
        foreach (var claim in station.Claims.Where(claim => Kept.Contains(claim.Type)))
            identity.AddClaim(new(claim.Type, claim.Type == Claim && named is not null ? named : claim.Value));
        foreach (var role in identity.FindAll(PersonClaims.Role).Where(role => !Opens(person.FindFirstValue(Claim), role.Value)).ToList()) identity.RemoveClaim(role);
    }

    /// <summary>An administrator's work asks for the password.</summary>
    private static bool Opens(string? named, string role) => named switch
    {
        Nobody => false,
        ByPin => role != Role.Administrator,
        _ => true,
    };
}
