using Bunit;
using MeltShop.Operations.Grades;
using MeltShop.Records.Grades;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Grades;
using MeltShop.Web.Pages.Grades;

namespace MeltShop.Web.Tests.Pages.Grades;

public sealed class GradeDetailTests : GradeTest
{
    [Fact]
    public void Grade_Opened_ShowsMinimaWithTheirStandingAndTheSource()
    {
        var page = Open(Role.Melter);

        Assert.Contains("EN 1563, edition 1997", page.Find("[data-testid=minima]").TextContent, StringComparison.Ordinal);
        Assert.Contains("from memory", page.Find("[data-testid=minima]").TextContent, StringComparison.Ordinal);
        Assert.Contains("Test figures, from memory", page.Markup, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("button"));
        Assert.NotNull(page.Find("[data-testid=read-only]"));
    }

    [Fact]
    public async Task Window_Changed_IsInForce()
    {
        var page = OpenForm("Mn");
        Type(page, "least", "0,1");
        Type(page, "most", "0.35");
        await page.Find("[data-testid=window-form]").SubmitAsync();
        page.WaitForAssertion(() => Assert.Contains("0.35", page.Find("[data-stage=Furnace] [data-quantity=Mn]").TextContent, StringComparison.Ordinal));

        Assert.Equal(new WindowView(WindowStage.Furnace, "Mn", 0.1, null, 0.35, 0.02), await Window(WindowStage.Furnace, "Mn"));
    }

    [Fact]
    public async Task Grade_NamedAnewAndTakenOutOfUse_SaysSoAndIsTakenBack()
    {
        var page = Open(Role.Metallurgist);
        page.Find("[data-testid=set-grade]").Click();
        HasKeyboard(page);
        page.Find("[data-testid=grade-form] [data-field=code] input").Change("");
        await page.Find("[data-testid=grade-form]").SubmitAsync();
        page.WaitForAssertion(() => Assert.Equal("text.missing", page.Find("[data-testid=grade-form] [data-field=code] .field-error").GetAttribute("data-code")), Patience);
        page.Find("[data-testid=grade-form] [data-field=code] input").Change("EN-GJS-500-7 thick");
        await page.Find("[data-testid=grade-form]").SubmitAsync();
        page.WaitForAssertion(() => Assert.Equal("EN-GJS-500-7 thick", page.Find("h1").TextContent), Patience);

        await page.Find("[data-testid=use]").SubmitAsync();
        page.WaitForAssertion(() => Assert.Contains("no longer used", page.Find(".page-head").TextContent, StringComparison.Ordinal), Patience);
        await page.Find("[data-testid=use]").SubmitAsync();
        page.WaitForAssertion(() => Assert.DoesNotContain("no longer used", page.Find(".page-head").TextContent, StringComparison.Ordinal), Patience);
    }

    [Theory]
    [InlineData("least", "0.5", "window.crossed")]
    [InlineData("aim", "0.6", "window.aimOutside")]
    [InlineData("most", "-1", "percent.negative")]
    [InlineData("most", "some", "number.notANumber")]
    [InlineData("margin", "", "number.missing")]
    public async Task Window_Wrong_IsToldAtItsFieldAndNothingIsSaved(string field, string typed, string code)
    {
        var page = OpenForm("Mn");
        Type(page, field, typed);
        await page.Find("[data-testid=window-form]").SubmitAsync();

        page.WaitForAssertion(() => Assert.Equal(code, page.Find($"[data-field='window.{field}'] .field-error").GetAttribute("data-code")));
        Assert.Equal(typed, page.Find($"[data-field='window.{field}'] input").GetAttribute("value"));
        Assert.Equal(0.4, (await Window(WindowStage.Furnace, "Mn"))!.Most);
    }

    [Fact]
    public async Task Window_AllEmpty_IsToldAboveTheForm()
    {
        var page = OpenForm("Mn");
        Type(page, "most", "");
        await page.Find("[data-testid=window-form]").SubmitAsync();

        page.WaitForAssertion(() => Assert.Equal("window.empty", page.Find("[data-testid=findings] li").GetAttribute("data-code")));
    }

    [Fact]
    public async Task Window_ChangedBySomebodyElseMeanwhile_IsToldAndWhatWasTypedStays()
    {
        var page = OpenForm("Mn");
        var version = (await The<GradesPage>().Grade(DuctileId, Cancellation))!.Version;
        await The<ChangeWindow>().Run(
            Founder, new(Guid.NewGuid(), Now, DuctileId, version, WindowStage.Furnace, "Mn", null, null, 0.3, 0.02), Cancellation);
        Type(page, "most", "0.5");
        await page.Find("[data-testid=window-form]").SubmitAsync();

        page.WaitForAssertion(() => Assert.Equal("version.stale", page.Find("[data-testid=findings] li").GetAttribute("data-code")));
        page.WaitForAssertion(() => Assert.Contains("0.3", page.Find(".now").TextContent, StringComparison.Ordinal));
        Assert.Equal("0.5", page.Find("[data-field='window.most'] input").GetAttribute("value"));
        Assert.Equal(0.3, (await Window(WindowStage.Furnace, "Mn"))!.Most);
    }

    [Fact]
    public async Task Quantity_Added_IsChosenAndStandsWithItsNameAndUnit()
    {
        var page = Open(Role.Metallurgist);
        page.Do(() => page.FindAll("[data-stage=Furnace] button").Single(button => button.TextContent == "Another quantity").ClickAsync());
        Type(page, "most", "1210");
        await page.Find("[data-testid=window-form]").SubmitAsync();
        Assert.Equal("choice.missing", page.Find("[data-field='window.quantity'] .field-error").GetAttribute("data-code"));

        Choose(page, "pearliteFactor");
        await page.Find("[data-testid=window-form]").SubmitAsync();
        page.WaitForAssertion(() => Assert.Equal("bound.outOfRange", page.Find("[data-field='window.most'] .field-error").GetAttribute("data-code")), Patience);

        Choose(page, "liquidusC");
        await page.Find("[data-testid=window-form]").SubmitAsync();
        page.WaitForAssertion(() => Assert.Contains("liquidus, °C", page.Find("[data-stage=Furnace] [data-quantity=liquidusC]").TextContent, StringComparison.Ordinal), Patience);
        Assert.Equal(1210, (await Window(WindowStage.Furnace, "liquidusC"))!.Most);
    }

    private static void Choose(IRenderedComponent<GradeDetail> page, string quantity) => page.Find("[data-field='window.quantity'] select").Change(quantity);

    private static void Type(IRenderedComponent<GradeDetail> page, string field, string text) =>
        page.Find($"[data-field='window.{field}'] input").Change(text);

    private IRenderedComponent<GradeDetail> OpenForm(string quantity)
    {
        var page = Open(Role.Metallurgist);
        page.Find($"[data-stage=Furnace] [data-quantity={quantity}] button").Click();
        return page;
    }

    private IRenderedComponent<GradeDetail> Open(string role)
    {
        SignIn(role);
        var page = Render<GradeDetail>(parameters => parameters.Add(p => p.Id, DuctileId));
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0);
        return page;
    }
}
