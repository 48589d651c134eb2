using Bunit;
using MeltShop.Records.Heats;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Pages.Heats;

namespace MeltShop.Web.Tests.Pages.Heats;

/// <summary>What changes the metal in the furnace beside charge and tap; masses by hand, no source.</summary>
public sealed class MetalFormsTests : HeatTest
{
    [Fact]
    public async Task Dip_Entered_SetsTheLedgerWithItsPlusMinus()
    {
        await WeighIn("steel", 1000);
        var page = Open();
        Press(page, "Dip or load cell");
        Assert.Contains("power", page.WaitForElement("[data-testid=dip-form] .caution", Patience).TextContent, StringComparison.OrdinalIgnoreCase);
        Type(page, "dip-form", "kg", "950");
        Type(page, "dip-form", "plusMinusKg", "30");
        await Hand(page, "dip-form");
        page.WaitForAssertion(() => Assert.Equal("text.missing", Error(page, "dip-form", "reason")), Patience);
        Press(page, "dipped with a rod");
        page.WaitForAssertion(() => Assert.Equal("dipped with a rod", Typed(page, "dip-form", "reason")), Patience);
        await Hand(page, "dip-form");

        page.WaitForAssertion(() => Assert.Equal("950\u00a0kg ± 30.0\u00a0kg", Within(page)), Patience);
        Assert.Empty(page.FindAll("[data-testid=dip-form]"));
        Assert.Equal(950, await Kg(), 6);
    }

    [Fact]
    public async Task Dip_AboveTheFurnace_IsToldAtItsFieldAndKeepsWhatWasTyped()
    {
        await WeighIn("steel", 1000);
        var page = Open();
        Press(page, "Dip or load cell");
        Type(page, "dip-form", "kg", "3100");
        Type(page, "dip-form", "reason", "load cell");
        await Hand(page, "dip-form");

        page.WaitForAssertion(() => Assert.Equal("furnace.capacity", Error(page, "dip-form", "kg")), Patience);
        Assert.Equal("3100", Typed(page, "dip-form", "kg"));
        Assert.Equal("load cell", Typed(page, "dip-form", "reason"));
        Assert.Equal(970, await Kg(), 6);
    }

    [Fact]
    public async Task BackCharge_Entered_GoesIntoTheBathWithItsYield()
    {
        await Bath();
        var page = Open();
        Press(page, "Charge back into the bath");
        HasKeyboard(page);
        Assert.NotEmpty(page.WaitForElement("[data-testid=back-charge-form] .caution", Patience).TextContent);
        await Hand(page, "back-charge-form");
        page.WaitForAssertion(() => Assert.Equal("choice.missing", Error(page, "back-charge-form", "materialId")), Patience);
        await page.Find("[data-testid=back-charge-form]").TriggerEventAsync("onentryanswered", new EntryAnsweredEventArgs
        {
            Findings = [new("observedAt", "time.future", [System.Text.Json.JsonSerializer.SerializeToElement("2026-03-02T07:00:00+01:00")])],
        });
        Assert.NotEmpty(page.FindAll("[data-testid=back-charge-form] [data-testid=findings] [data-code=\"time.future\"]")); // there is no field for the time
        Choose(page, "back-charge-form", "materialId", $"{MaterialIds["steel"]}");
        Type(page, "back-charge-form", "kg", "200");
        await Hand(page, "back-charge-form");

        page.WaitForState(() => page.FindAll("[data-testid=back-charge-form]").Count == 0, Patience);
        Assert.Equal(970 + 194, await Kg(), 6);
        Assert.True((await Heat()).Weighings[^1].IntoBath);
    }

    [Fact]
    public async Task OtherIron_PouredBack_NeedsItsAnalysis()
    {
        await Bath();
        var page = Open();
        Press(page, "Pour back into the furnace");
        HasKeyboard(page);
        Type(page, "pour-back-form", "kg", "150");
        Type(page, "pour-back-form", "reason", "from the holding ladle");
        await Hand(page, "pour-back-form");
        page.WaitForState(() => page.FindAll("[data-testid=pour-back-form] [data-code='pourBack.analysisMissing']").Count > 0, Patience);
        Assert.Equal("150", Typed(page, "pour-back-form", "kg"));
        Type(page, "pour-back-form", "percents.C", "3.55");
        Type(page, "pour-back-form", "percents.Mg", "0.02");
        await Hand(page, "pour-back-form");

        page.WaitForState(() => page.FindAll("[data-testid=pour-back-form]").Count == 0, Patience);
        Assert.Equal(970 + 150, await Kg(), 6);
        Assert.Equal((FurnaceMetalKind.PouredBack, 150d), ((await Heat()).Metal[^1].Kind, (await Heat()).Metal[^1].Kg));
    }

    [Fact]
    public async Task Pigged_MoreThanThereIs_IsRefusedAndLessIsTakenOut()
    {
        await Bath();
        var page = Open();
        Press(page, "Pig out");
        Type(page, "pig-form", "kg", "2000");
        await Hand(page, "pig-form");
        page.WaitForAssertion(() => Assert.Equal("furnace.short", Error(page, "pig-form", "kg")), Patience);
        Assert.Equal("2000", Typed(page, "pig-form", "kg"));
        Type(page, "pig-form", "kg", "250");
        await Hand(page, "pig-form");

        page.WaitForState(() => page.FindAll("[data-testid=pig-form]").Count == 0, Patience);
        Assert.Equal(970 - 250, await Kg(), 6);
    }

    [Fact]
    public void HeatThatIsBeingCharged_CanBeDippedAndNothingElse()
    {
        var page = Open();

        Assert.Equal(["Dip or load cell"], page.WaitForElement("[data-testid=metal] .presses", Patience).QuerySelectorAll("button").Select(button => button.TextContent.Trim()));
    }

    private async Task Bath()
    {
        await WeighIn("steel", 1000);
        await GoodSample();
    }

    private async Task<double> Kg() => (await Heat()).Heat.LiquidKg;

    private static string Within(IRenderedComponent<HeatDetail> page) => page.Find("[data-testid=metal-now]").TextContent;

    private static string? Typed(IRenderedComponent<HeatDetail> page, string form, string path) => Field(page, form, path).QuerySelector("input")!.GetAttribute("value");

    private static void Choose(IRenderedComponent<HeatDetail> page, string form, string path, string value) =>
        page.Find($"[data-testid={form}] [data-field=\"{path}\"] select").Change(value);

    private static Task Hand(IRenderedComponent<HeatDetail> page, string form) => page.WaitForElement($"[data-testid={form}]", Patience).SubmitAsync();
}
