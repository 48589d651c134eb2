using Bunit;
using MeltShop.Records.People;

namespace MeltShop.Web.Tests.Pages.Charge;

/// <summary>A plan that its own scatter puts in doubt is not shown as meeting the grade.</summary>
public sealed class DoubtTests : ChargeTest
{
    [Fact]
    public void Limit_ThatTheScatterCrosses_IsTooCloseToTellUntilThePlanKeepsAway()
    {
        // Manganese of the steel scatters by 0.1 points; 0.01 of margin is far less than that in the melt.
        var page = OpenPlanned();
        page.WaitForAssertion(() => Assert.Equal("close", page.Find("[data-limit=Mn] .limit").GetAttribute("data-verdict")), Patience);

        Assert.Matches("About [0-9]+ of 100 heats end outside", page.Find("[data-limit=Mn]").TextContent);
        Assert.Contains("Too close to tell: Mn.", page.Find("[data-testid=too-close]").TextContent, StringComparison.Ordinal);
        Type(page, "confidencePercent", "95");

        page.WaitForAssertion(() => Assert.Equal("in", page.Find("[data-limit=Mn] .limit").GetAttribute("data-verdict")), Patience);
        Assert.Empty(page.FindAll("[data-testid=too-close]"));
    }

    [Fact]
    public void Limit_WhereNoScatterIsKnown_SaysSoToTheMetallurgist() =>
        Assert.Contains("No scatter is known", OpenPlanned(Role.Metallurgist).Find("[data-limit=C]").TextContent, StringComparison.Ordinal);
}
