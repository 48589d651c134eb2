using Bunit;
using MeltShop.Operations.Yard;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Yard;

namespace MeltShop.Web.Tests.Pages.Charge;

public sealed class ChargeChangesTests : ChargeTest
{
    [Fact]
    public void Price_ChangedForThisCharge_ChangesThePlan()
    {
        var page = OpenPlanned();
        var before = CostPerTonne(page);
        Change(page, "Test steel");
        Type(page, "materials.steel.pricePerTonne", "900");

        page.WaitForAssertion(() => Assert.NotEqual(before, CostPerTonne(page)), Patience);
        Assert.Contains("changed here", page.Find("[data-material=steel]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Price_OfALeftOutMaterialChanged_IsShownAndComparedWithTheOneAtWhichItComesIn()
    {
        var page = OpenPlanned(Role.Metallurgist);
        Change(page, "Test copper");
        Type(page, "materials.copper.pricePerTonne", "-5000");
        page.WaitForState(() => page.FindAll("[data-testid=in-plan] [data-material=copper]").Count > 0, Patience);
        Type(page, "materials.copper.pricePerTonne", "20000");

        page.WaitForAssertion(() => Assert.Contains("20000.00\u00a0EUR/t", page.Find("[data-testid=left-out] [data-material=copper]").TextContent, StringComparison.Ordinal), Patience);
        Assert.Contains("would come in at", page.Find("[data-material=copper] .why").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Limit_ChangedForThisCharge_ChangesThePlanAndCanBeTakenBack()
    {
        var page = OpenPlanned();
        var before = CostPerTonne(page);
        Change(page, "Si");
        Type(page, "limits.Si.least", "1,6");
        page.WaitForAssertion(() => Assert.NotEqual(before, CostPerTonne(page)), Patience);

        Press(page, "Back to what the grade says");
        page.WaitForAssertion(() => Assert.Equal(before, CostPerTonne(page)), Patience);
    }

    [Fact]
    public void Material_LeftOut_IsNotChargedAndSaysSo()
    {
        var page = OpenPlanned();
        Change(page, "Test fesi");
        page.Find("[data-testid=material-choices] input[type=checkbox]").Change(true);

        page.WaitForAssertion(() => Assert.Contains("you left it out", page.Find("[data-testid=left-out] [data-material=fesi]").TextContent, StringComparison.Ordinal), Patience);
    }

    [Fact]
    public void Charge_Impossible_NamesWhatClashesAndOffersNoPlanAndNoStart()
    {
        var page = OpenPlanned();
        Change(page, "Si");
        Type(page, "limits.Si.least", "0.05");
        Type(page, "limits.Si.most", "0.1");
        page.WaitForState(() => page.FindAll("[data-testid=infeasible]").Count > 0, Patience);

        Assert.Matches(@"Si: most 0.10\u00a0% and a margin of 0.02\u00a0% to it are asked; 0\.[0-9]+\u00a0% is the nearest", page.Find("[data-clash=Si]").TextContent);
        Assert.NotNull(page.Find("[data-limit=Si][data-clashes=true]"));

        // What has to be loosened stands before the materials, and is still open.
        Assert.Contains("limits", page.FindAll("section.limits, section.materials")[0].ClassName, StringComparison.Ordinal);
        Assert.NotNull(page.Find("[data-limit=Si] [data-testid=limit-choices]"));
        Assert.Empty(page.FindAll("[data-testid=in-plan]"));
        Assert.Empty(page.FindAll("[data-testid=totals]"));
        Assert.DoesNotContain(page.FindAll("button"), button => button.TextContent == "Start the heat");
    }

    [Fact]
    public void Charge_MoreThanTheYardHolds_SaysWhichMassCanBeReached()
    {
        var page = OpenPlanned();
        foreach (var code in new[] { "pig", "steel", "carbon", "fesi", "copper" })
        {
            Change(page, "Test " + code);
            Type(page, $"materials.{code}.maxKg", "100");
        }

        page.WaitForAssertion(
            () => Assert.Matches("do not give 3000\u00a0kg; 4[0-9]{2}\u00a0kg is the nearest", page.Find("[data-testid=infeasible]").TextContent), Patience);
    }

    [Fact]
    public void Bounds_Crossed_AreToldAtTheirField()
    {
        var page = OpenPlanned();
        Change(page, "Test pig");
        Type(page, "materials.pig.minKg", "500");
        Type(page, "materials.pig.maxKg", "400");

        page.WaitForAssertion(
            () => Assert.Equal("bounds.crossed", Field(page, "materials.pig.minKg").QuerySelector(".field-error")!.GetAttribute("data-code")), Patience);
        Assert.Equal("500", Field(page, "materials.pig.minKg").QuerySelector("input")!.GetAttribute("value"));
    }

    [Fact]
    public async Task Price_ChangedInTheYardBySomebodyElse_ChangesThePlanAndKeepsWhatIsTyped()
    {
        var page = OpenPlanned();
        var before = CostPerTonne(page);
        Type(page, "meltToleranceKg", "half a tonne");
        var steel = (await The<YardPage>().Material(MaterialIds["steel"], Cancellation))!;
        await The<ChangePrice>().Run(Founder, new(Guid.NewGuid(), Now, steel.Id, steel.Version, 555), Cancellation);
        page.WaitForAssertion(() => Assert.Equal("half a tonne", Field(page, "meltToleranceKg").QuerySelector("input")!.GetAttribute("value")), Patience);

        Type(page, "meltToleranceKg", "");
        page.WaitForAssertion(() => Assert.NotEqual(before, CostPerTonne(page)), Patience);
    }
}
