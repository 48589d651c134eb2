using Bunit;
using MeltShop.Metallurgy.Elements;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Pages.Yard;

namespace MeltShop.Web.Tests.Pages.Yard;

public sealed class AnalysisFormTests : YardTest
{
    [Fact]
    public async Task Analysis_Corrected_IsInForceWithItsReason()
    {
        var page = Open();
        Type(page, "Mn", 1, "0,75");
        Type(page, "Mn", 4, "80");
        Reason(page, "new certificate");
        await page.Find("[data-testid=analysis-form]").SubmitAsync();
        page.WaitForState(() => page.FindAll("[data-testid=analysis-form]").Count == 0);

        var analysis = (await Plate()).Analysis!;
        Assert.Equal(0.75, analysis.Percents.Single(percent => percent.Element == Element.Mn).Percent);
        Assert.Equal((92, 80), analysis.Percents.Where(percent => percent.Element == Element.Mn).Select(percent => (percent.RecoveryPercent, percent.BathRecoveryPercent)).Single());
        Assert.Equal("new certificate", analysis.Reason);
        page.WaitForAssertion(() => Assert.Contains("new certificate", page.Find(".analysis").TextContent, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("-0.1", "number.tooSmall")]
    [InlineData("101", "number.tooLarge")]
    [InlineData("much", "number.notANumber")]
    public async Task Percent_Wrong_IsToldAtItsField(string typed, string code)
    {
        var page = Open();
        Type(page, "Mn", 1, typed);
        Reason(page, "test");
        await page.Find("[data-testid=analysis-form]").SubmitAsync();

        Assert.Equal(code, Field(page, "Mn", 1).QuerySelector(".field-error")!.GetAttribute("data-code"));
        Assert.Equal(0.9, (await Plate()).Analysis!.Percents.Single(percent => percent.Element == Element.Mn).Percent);
    }

    [Theory]
    [InlineData("Xx", "element.unknown")]
    [InlineData("CO", "element.unknown")]
    [InlineData("Fe", "analysis.iron")]
    [InlineData("C", "element.twice")]
    public async Task Element_Wrong_IsToldAtItsField(string typed, string code)
    {
        var page = Open();
        Type(page, "Mo", 0, typed);
        Reason(page, "test");
        await page.Find("[data-testid=analysis-form]").SubmitAsync();

        Assert.Equal(code, page.FindAll(".analysis-row")[^1].QuerySelector(".field-error")!.GetAttribute("data-code"));
    }

    [Fact]
    public async Task Analysis_OverAHundred_IsToldAndNothingTypedIsLost()
    {
        var page = Open();
        Type(page, "Mn", 1, "60");
        Type(page, "Si", 1, "60");
        Reason(page, "test");
        await page.Find("[data-testid=analysis-form]").SubmitAsync();

        page.WaitForAssertion(() => Assert.Equal("analysis.sum", page.Find("[data-testid=findings] li").GetAttribute("data-code")));
        Assert.Equal("60", Field(page, "Mn", 1).QuerySelector("input")!.GetAttribute("value"));
    }

    [Fact]
    public async Task Element_AddedAndRemoved_IsSavedAsShown()
    {
        var page = Open();
        page.Do(() => page.FindAll("button").Single(button => button.TextContent == "Remove Mo").ClickAsync());
        page.Do(() => page.FindAll("button").Single(button => button.TextContent == "Another element").ClickAsync());
        Type(page, "", 1, "0.08");
        Type(page, "", 0, "Cu");
        Reason(page, "test");
        await page.Find("[data-testid=analysis-form]").SubmitAsync();
        page.WaitForState(() => page.FindAll("[data-testid=analysis-form]").Count == 0);

        Assert.Equal("C Si Mn Cu", string.Join(' ', (await Plate()).Analysis!.Percents.Select(percent => percent.Element.Symbol)));
    }

    private static AngleSharp.Dom.IElement Field(IRenderedComponent<MaterialDetail> page, string row, int place) =>
        page.FindAll($"[data-row=\"{row}\"] .field")[place];

    private static void Type(IRenderedComponent<MaterialDetail> page, string row, int place, string text) =>
        page.Do(() => Field(page, row, place).QuerySelector("input")!.ChangeAsync(text));

    private static void Reason(IRenderedComponent<MaterialDetail> page, string text) => page.Find("[data-field=reason] input").Change(text);

    private IRenderedComponent<MaterialDetail> Open()
    {
        SignIn(Role.Metallurgist);
        var page = Render<MaterialDetail>(parameters => parameters.Add(p => p.Id, PlateId));
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0);
        page.Do(() => page.FindAll("button").Single(button => button.TextContent == "Correct the analysis").ClickAsync());
        return page;
    }

    private async Task<MaterialView> Plate() => (await The<YardPage>().Material(PlateId, Cancellation))!;
}
