using System.Security.Claims;
using MeltShop.Records.People;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;

namespace MeltShop.Web.SignIn;

/// <summary>Identity's sign-in with two rules of the shop: who was deactivated stays out, and a person keeps the station they signed in at.</summary>
internal sealed class ShopSignIn(
    UserManager<Person> people, IHttpContextAccessor http, IUserClaimsPrincipalFactory<Person> claims, IOptions<IdentityOptions> options,
    ILogger<SignInManager<Person>> log, IAuthenticationSchemeProvider schemes, IUserConfirmation<Person> confirmation, IPasswordHasher<Person> hasher)
    : SignInManager<Person>(people, http, claims, options, log, schemes, confirmation)
{
    // Costs what a real check costs, so that the time of an answer does not tell which names exist.
    private static readonly Person Nobody = new() { DisplayName = "" };
    private static readonly string NobodysHash = new PasswordHasher<Person>().HashPassword(Nobody, Guid.NewGuid().ToString());

    /// <summary>Signs a person in at a station.</summary>
    public async Task<SignInResult> EnterAsync(string userName, string password, string station)
    {
        if (await UserManager.FindByNameAsync(userName) is not { } person)
        {
            hasher.VerifyHashedPassword(Nobody, NobodysHash, password);
            return SignInResult.Failed;
        }

        var result = await CheckPasswordSignInAsync(person, password, lockoutOnFailure: true);
        if (result.Succeeded) await SignInWithClaimsAsync(person, isPersistent: false, [new Claim(PersonClaims.Station, station)]);
        return result;
    }

    /// <inheritdoc/>
    public override async Task<bool> CanSignInAsync(Person user) => user.IsActive && await base.CanSignInAsync(user);

    /// <inheritdoc/>
    public override async Task<Person?> ValidateSecurityStampAsync(ClaimsPrincipal? principal) =>
        await base.ValidateSecurityStampAsync(principal) is { IsActive: true } person ? person : null;
}
