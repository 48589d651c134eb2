using System.Globalization;
using System.Security.Claims;
using MeltShop.Operations.People;
using MeltShop.Records.People;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
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

    /// <summary>Signs a person in at a station; a shared one stays signed in for one shift, whoever is named there.</summary>
    public async Task<SignInResult> EnterAsync(string userName, string password, string station, bool isShared)
    {
        if (await UserManager.FindByNameAsync(userName) is not { } person)
        {
            hasher.VerifyHashedPassword(Nobody, NobodysHash, password);
            return SignInResult.Failed;
        }

        var result = await CheckPasswordSignInAsync(person, password, lockoutOnFailure: true);
        if (!result.Succeeded) return result;
        List<Claim> claims = [new(PersonClaims.Station, station)];
        if (isShared) claims.Add(new(SharedStation.Claim, SharedStation.ByPassword));
        await SignInWithClaimsAsync(person, new AuthenticationProperties { AllowRefresh = isShared ? false : null }, claims);
        return result;
    }

    /// <summary>Whether somebody else knows this person's password, who gave it to them.</summary>
    public async Task<bool> HasStartPasswordAsync(string userName) => await UserManager.FindByNameAsync(userName) is { } person
        && (await UserManager.GetClaimsAsync(person)).Any(claim => claim.Type == StartPassword.Claim);

    /// <summary>Names another person at a shared station. It signs nobody in: the station is, and only until its shift ends.</summary>
    public async Task<bool> TakeOverAsync(ClaimsPrincipal station, string userName, string pin)
    {
        var person = await UserManager.FindByNameAsync(userName);
        var right = hasher.VerifyHashedPassword(person ?? Nobody, person?.PinHash ?? NobodysHash, pin) != PasswordVerificationResult.Failed;
        if (!right || person?.PinHash is null || !await CanSignInAsync(person) || await IsLockedOut(person)) return false;
        await Name(person, station, SharedStation.ByPin);
        return true;
    }

    /// <summary>Nobody is named at the station any more: it shows, and does nothing.</summary>
    public async Task StepDownAsync(ClaimsPrincipal station)
    {
        if (await UserManager.GetUserAsync(station) is { } person) await Name(person, station, SharedStation.Nobody);
    }

    /// <summary>A cookie with what the person has chosen just now, at the same station.</summary>
    public async Task RenewAsync(ClaimsPrincipal user)
    {
        // Read anew: this request may have looked at the person before they chose.
        var id = long.Parse(UserManager.GetUserId(user)!, CultureInfo.InvariantCulture);
        if (await UserManager.Users.AsNoTracking().SingleOrDefaultAsync(p => p.Id == id) is { } person) await Name(person, user, null);
    }

    /// <summary>The cookie ends when the station's own would have.</summary>
    private async Task Name(Person person, ClaimsPrincipal station, string? named)
    {
        var until = (await Context.AuthenticateAsync(AuthenticationScheme)).Properties;
        var principal = await CreateUserPrincipalAsync(person);
        principal.MoveTo(station, named);
        await Context.SignInAsync(AuthenticationScheme, principal, until);
    }

    /// <inheritdoc/>
    public override async Task<bool> CanSignInAsync(Person user) => user.IsActive && await base.CanSignInAsync(user);

    /// <inheritdoc/>
    public override async Task<Person?> ValidateSecurityStampAsync(ClaimsPrincipal? principal) =>
        await base.ValidateSecurityStampAsync(principal) is { IsActive: true } person ? person : null;
}
