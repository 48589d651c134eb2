using System.Security.Claims;
using Bunit;
using Bunit.TestDoubles;
using MeltShop.Web.Components.Shell;
using MeltShop.Web.SignIn;
using MeltShop.Web.Tests.Pages;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Components.Shell;

/// <summary>What a page's script is answered when it asks whether the circuit is there.</summary>
public sealed class HeartbeatTests : ComponentTest
{
    private readonly SetClock clock = new() { At = new(2026, 3, 2, 6, 0, 0, TimeSpan.Zero) };

    [Fact]
    public async Task Beat_OnceTheSignInHasEnded_IsAnsweredWithoutATime()
    {
        var terms = new SignInTerms(clock);
        Services.AddSingleton<TimeProvider>(clock).AddSingleton(terms);
        AddAuthorization().SetAuthorized("tilda").SetClaims(new Claim(SignInTerms.Claim, "17"));
        terms.Note(new(new ClaimsIdentity([new(SignInTerms.Claim, "17")])), new(2026, 3, 2, 18, 0, 0, TimeSpan.Zero));
        var heart = Render<Heartbeat>().Instance;
        Assert.Equal(1_772_431_200_000, await heart.Beat());

        clock.At = new(2026, 3, 2, 18, 0, 1, TimeSpan.Zero);

        Assert.Null(await heart.Beat());
    }

    [Fact]
    public async Task Beat_WhereNobodyIsSignedIn_TellsTheTime()
    {
        Services.AddSingleton<TimeProvider>(clock).AddSingleton(new SignInTerms(clock));
        AddAuthorization();

        Assert.Equal(1_772_431_200_000, await Render<Heartbeat>().Instance.Beat());
    }
}
