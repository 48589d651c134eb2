using System.Security.Claims;
using MeltShop.Records.People;
using MeltShop.Web.SignIn;
using MeltShop.Web.Tests.Running;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.SignIn;

public sealed class ActingPersonTests(WebApp app) : IClassFixture<WebApp>
{
    [Fact]
    public async Task Acting_SignedIn_SaysWhoWhereAndWithWhichRoles()
    {
        var id = await app.AddPersonAsync("jutta", Role.Melter, Role.Inspector);
        await using var scope = app.Services.CreateAsyncScope();
        var person = await scope.ServiceProvider.GetRequiredService<UserManager<Person>>().FindByNameAsync("jutta");
        var principal = await scope.ServiceProvider.GetRequiredService<IUserClaimsPrincipalFactory<Person>>().CreateAsync(person!);
        principal.Identities.Single().AddClaim(new(PersonClaims.Station, "Lab tablet"));
        Enter(scope, principal);

        var acting = await scope.ServiceProvider.GetRequiredService<ActingPerson>().GetAsync();

        Assert.Equal((id, "jutta Somebody", "Lab tablet"), (acting.PersonId, acting.PersonName, acting.Station));
        Assert.Equal([Role.Inspector, Role.Melter], acting.Roles.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Acting_NobodyOrAMachine_IsNobody()
    {
        await using var scope = app.Services.CreateAsyncScope();
        Enter(scope, new ClaimsPrincipal(new ClaimsIdentity([new(ClaimTypes.Name, "scale")], "api-key")));
        var acting = scope.ServiceProvider.GetRequiredService<ActingPerson>();

        Assert.Null(await acting.FindAsync());
        await Assert.ThrowsAsync<InvalidOperationException>(acting.GetAsync);
    }

    private static void Enter(AsyncServiceScope scope, ClaimsPrincipal principal) =>
        ((IHostEnvironmentAuthenticationStateProvider)scope.ServiceProvider.GetRequiredService<AuthenticationStateProvider>())
            .SetAuthenticationState(Task.FromResult(new AuthenticationState(principal)));
}
