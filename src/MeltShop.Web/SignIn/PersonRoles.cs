using System.Security.Claims;

namespace MeltShop.Web.SignIn;

internal static class PersonRoles
{
    /// <summary>The roles that the person holds at this screen.</summary>
    public static IReadOnlyList<string> Roles(this ClaimsPrincipal user) => [.. user.FindAll(PersonClaims.Role).Select(claim => claim.Value)];
}
