using MeltShop.Records.People;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;

namespace MeltShop.Web.SignIn;

/// <summary>
/// A circuit lives for hours without a request, so that no cookie is looked at: this asks every minute whether its person may
/// still be in, and with these roles.
/// </summary>
internal sealed class RevalidatingPerson(ILoggerFactory loggers, IServiceScopeFactory scopes, IOptions<SecurityStampValidatorOptions> options)
    : RevalidatingServerAuthenticationStateProvider(loggers)
{
    protected override TimeSpan RevalidationInterval => options.Value.ValidationInterval;

    protected override async Task<bool> ValidateAuthenticationStateAsync(AuthenticationState authenticationState, CancellationToken cancellationToken)
    {
        await using var scope = scopes.CreateAsyncScope();
        var people = scope.ServiceProvider.GetRequiredService<UserManager<Person>>();
        if (await people.GetUserAsync(authenticationState.User) is not { IsActive: true } person) return false;
        var stamp = authenticationState.User.FindFirst(people.Options.ClaimsIdentity.SecurityStampClaimType)?.Value;
        return stamp == await people.GetSecurityStampAsync(person);
    }
}
