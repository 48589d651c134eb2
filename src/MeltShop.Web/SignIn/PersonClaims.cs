using System.Security.Claims;
using MeltShop.Records.People;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;

namespace MeltShop.Web.SignIn;

/// <summary>What the cookie says about a person: who, under which name, with which roles; and at which station, added at sign-in.</summary>
internal sealed class PersonClaims(UserManager<Person> people, IOptions<IdentityOptions> options) : IUserClaimsPrincipalFactory<Person>
{
    public const string Id = "person";
    public const string Name = "name";
    public const string Role = "role";
    public const string Station = "station";
    public const string Culture = "culture";

    public async Task<ClaimsPrincipal> CreateAsync(Person user)
    {
        var identity = new ClaimsIdentity(IdentityConstants.ApplicationScheme, Name, Role);
        identity.AddClaim(new(Id, await people.GetUserIdAsync(user)));
        identity.AddClaim(new(Name, user.DisplayName));
        identity.AddClaim(new(Culture, user.Culture));
        identity.AddClaim(new(options.Value.ClaimsIdentity.SecurityStampClaimType, await people.GetSecurityStampAsync(user)));
        foreach (var role in await people.GetRolesAsync(user)) identity.AddClaim(new(Role, role));
        return new(identity);
    }
}
