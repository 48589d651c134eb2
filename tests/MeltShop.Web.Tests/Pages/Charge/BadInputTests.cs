using Bunit;
using MeltShop.Operations.Yard;
using MeltShop.Records.Yard;
using MeltShop.Web.Pages.Charge;

namespace MeltShop.Web.Tests.Pages.Charge;

/// <summary>What cannot be, told at the field that has to be put right.</summary>
public sealed class BadInputTests : ChargeTest
{
    [Theory]
    [InlineData("heelKg", "3200", "heel.overCapacity")]
    [InlineData("meltKg", "", "number.missing")]
    [InlineData("meltToleranceKg", "5", "furnace.noRoom")] // 3000 kg are wanted, and the furnace holds 3000
    [InlineData("groups.PigIron.minPercent", "101", "number.tooLarge")]
    [InlineData("groups.Returns.minKg", "100", "group.empty")]
    [InlineData("wishes.energyPricePerKWh", "0.2", "number.missing", "wishes.meltingKWhPerTonne")]
    public void Field_Wrong_SaysSoItselfAndKeepsWhatWasTyped(string path, string typed, string code, string? at = null)
    {
        var page = OpenPlanned();
        Type(page, path, typed);

        page.WaitForAssertion(() => Assert.Equal(code, Error(page, at ?? path)), Patience);
        Assert.Equal(typed, Field(page, path).QuerySelector("input")!.GetAttribute("value") ?? "");
        Assert.Equal("false", page.Find("[data-testid=plan-age]").GetAttribute("data-current"));
    }

    [Fact]
    public void Limits_ThatContradict_AreToldAtTheirField()
    {
        var page = OpenPlanned();
        Change(page, "Si");
        Type(page, "limits.Si.least", "1.7");
        Type(page, "limits.Si.most", "1.6");

        page.WaitForAssertion(() => Assert.Equal("window.crossed", Error(page, "limits.Si.least")), Patience);
    }

    [Fact]
    public void Mass_AskedForOfWhatIsLeftOut_IsToldAtItsField()
    {
        var page = OpenPlanned();
        Change(page, "Test steel");
        Type(page, "materials.steel.minKg", "100");
        page.Find("[data-testid=material-choices] input[type=checkbox]").Change(true);

        page.WaitForAssertion(() => Assert.Equal("material.leftOut", Error(page, "materials.steel.minKg")), Patience);
    }

    [Fact]
    public void Shares_ThatCannotSum_AreToldWhereTheyWereTyped()
    {
        var page = OpenPlanned();
        foreach (var code in new[] { "pig", "steel", "carbon", "fesi", "copper" })
        {
            Change(page, "Test " + code);
            page.WaitForState(() => page.FindAll($"[data-field=\"materials.{code}.maxPercent\"]").Count > 0, Patience);
            Type(page, $"materials.{code}.maxPercent", "15");
        }

        page.WaitForAssertion(() => Assert.Equal("shares.under100", Error(page, "materials.copper.maxPercent")), Patience);
    }

    [Fact]
    public async Task Price_OfNothing_IsAskedAboutOnceAndNeverRefused()
    {
        await The<ChangePrice>().Run(Founder, new(Guid.NewGuid(), Now, MaterialIds["steel"], (await The<Records.Reading.Yard.YardPage>().Material(MaterialIds["steel"], Cancellation))!.Version, 0), Cancellation);
        var page = OpenPlanned();
        Assert.Contains("Test steel has a price of 0.00\u00a0EUR/t", page.Find("[data-price-asked=steel]").TextContent, StringComparison.Ordinal);
        Assert.Contains("steel", InPlan(page));
        Press(page, "Yes, it is right");
        page.WaitForState(() => page.FindAll("[data-price-asked]").Count == 0, Patience);
        Type(page, "meltKg", "2990");
        WaitForPlan(page);

        Assert.Empty(page.FindAll("[data-price-asked]"));
    }

    [Fact]
    public async Task Material_WithoutAnAnalysis_SaysThatItCannotBePlannedAndWhereToPutThatRight()
    {
        await Forget("copper");

        var row = OpenPlanned().Find("[data-material=copper]");
        Assert.Contains("no analysis: it cannot be planned; enter one in the yard", row.TextContent, StringComparison.Ordinal);
        Assert.Equal($"/yard/{MaterialIds["copper"]}", row.QuerySelector("a")!.GetAttribute("href"));
    }

    [Fact]
    public async Task Material_WhoseYieldIsUnknown_SaysThatItCannotBePlannedAndWhereToPutThatRight()
    {
        await Add("turnings", MaterialKind.SteelScrap, 10, null, new("C", 0.3), new("Si", 0.3));

        Assert.Contains("its yield is not known: it cannot be planned; say it in the yard", OpenPlanned().Find("[data-material=turnings]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Material_ThatCannotBePlanned_IsNotHiddenAmongWhatIsNotCharged()
    {
        for (var n = 1; n <= 8; n++) await Add($"dear{n}", MaterialKind.SteelScrap, 5000 + n, 97, new("C", 0.1), new("Mn", 0.6));
        await Add("turnings", MaterialKind.SteelScrap, 10, null, new("C", 0.3), new("Si", 0.3));
        var page = OpenPlanned();

        Assert.Contains(page.FindAll("button"), button => button.TextContent.Contains("Show ", StringComparison.Ordinal));
        Assert.NotEmpty(page.FindAll("[data-material=turnings] a[href^='/yard/']"));
    }

    [Fact]
    public async Task Material_OfLots_SaysFromWhichToTake()
    {
        await The<BookStock>().Run(Founder, new(Guid.NewGuid(), Now, MaterialIds["steel"], StockKind.Received, 250) { Lot = "S 1" }, Cancellation);
        await The<BookStock>().Run(Founder, new(Guid.NewGuid(), Now.AddMinutes(1), MaterialIds["steel"], StockKind.Received, 9000) { Lot = "S 2" }, Cancellation);

        Assert.Contains("250\u00a0kg from lot S 1, ", OpenPlanned().Find("[data-testid=in-plan] tr[data-material=steel] [data-testid=from-lots]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bin_OutOfReach_IsLeftOutAndWhatLiesOnlyThereSaysSo()
    {
        await The<BookStock>().Run(Founder, new(Guid.NewGuid(), Now, MaterialIds["steel"], StockKind.Counted, 0), Cancellation);
        await The<BookStock>().Run(Founder, new(Guid.NewGuid(), Now.AddMinutes(1), MaterialIds["steel"], StockKind.Received, 9000) { Lot = "S 1", Bin = "4" }, Cancellation);
        await The<MoveLot>().Run(Founder, new(Guid.NewGuid(), Now, MaterialIds["pig"], null, "7"), Cancellation);
        var page = OpenPlanned();
        Assert.Equal("from bin 4, lot S 1", page.Find("[data-testid=in-plan] tr[data-material=steel] [data-testid=from-lots]").TextContent);
        Assert.Equal("from bin 7", page.Find("[data-testid=in-plan] tr[data-material=pig] [data-testid=from-lots]").TextContent);

        page.Find("[data-bin='4']").Click();
        page.WaitForAssertion(() => Assert.Contains("lies only in bins that are left out", page.Find("[data-testid=left-out] tr[data-material=steel]").TextContent, StringComparison.Ordinal), Patience);
        Assert.Contains("left out: 4", page.Find("[data-testid=bins] summary").TextContent, StringComparison.Ordinal);

        page.Find("[data-bin='4']").Click();
        page.WaitForAssertion(() => Assert.Contains("steel", InPlan(page)), Patience);
    }

    [Fact]
    public async Task Returns_WithMagnesiumAndNoRecoveryForIt_SayWhatToEnter()
    {
        await Add("returns", MaterialKind.Returns, 200, 97, new("C", 3.6), new("Si", 2.5), new("Mg", 0.04));

        Assert.Contains("holds magnesium, and no recovery for it is given", OpenPlanned().Find("[data-material=returns]").TextContent, StringComparison.Ordinal);
    }

    private static string? Error(IRenderedComponent<ChargePlanning> page, string path) => Field(page, path).QuerySelector(".field-error")?.GetAttribute("data-code");
}
