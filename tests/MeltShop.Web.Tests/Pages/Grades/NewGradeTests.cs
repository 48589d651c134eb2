using Bunit;
using MeltShop.Operations.Yard;
using MeltShop.Records.Grades;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Yard;
using MeltShop.Web.Pages.Grades;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Tests.Pages.Grades;

/// <summary>A grade that the shop does not know yet, and its treatment, which is said afterwards.</summary>
public sealed class NewGradeTests : GradeTest
{
    [Fact]
    public async Task Grade_WithSomeRowsTyped_HasTheseWindowsOnly()
    {
        var page = Open();
        Fill(page);
        Row(page, WindowStage.Furnace, 0, ("least", "3,5"), ("most", "3.8"), ("margin", "0.02"));
        Row(page, WindowStage.Poured, 1, ("most", "2.8"));
        page.Find("[data-testid=new-grade]").Submit();

        page.WaitForAssertion(() => Assert.Matches(@"/grades/\d+$", The<NavigationManager>().Uri), Patience);
        var grade = (await The<GradesPage>().Load(Cancellation)).Grades.Single(g => g.Code == "EN-GJS-400-15");
        Assert.Equal((IronFamily.Ductile, "from memory", null), (grade.Family, grade.Source, grade.Recipe));
        Assert.Equal([new(WindowStage.Furnace, "C", 3.5, null, 3.8, 0.02), new(WindowStage.Poured, "Si", null, null, 2.8, 0)], grade.Windows);
    }

    [Fact]
    public void Grade_WithACrossedWindow_IsRefusedAtTheFieldOfItsRowAndNothingTypedIsLost()
    {
        var page = Open();
        Fill(page);
        Row(page, WindowStage.Furnace, 0, ("least", "3.5"), ("most", "3.8"));
        Row(page, WindowStage.Furnace, 2, ("least", "0.5"), ("most", "0.3")); // the second that is handed in
        page.Find("[data-testid=new-grade]").Submit();

        page.WaitForAssertion(() => Assert.Equal(
            "window.crossed", page.Find("[data-stage=Furnace] [data-row=Mn] [data-field$='.least'] .field-error").GetAttribute("data-code")), Patience);
        Assert.Single(page.FindAll(".field-error"));
        Assert.Equal("3.8", page.Find("[data-stage=Furnace] [data-row=C] [data-field$='.most'] input").GetAttribute("value"));
    }

    [Fact]
    public void Quantity_ThatIsNoneOrIsThereTwice_IsToldInItsRow()
    {
        var page = Open();
        Fill(page);
        Row(page, WindowStage.Furnace, 0, ("least", "3.5"));
        page.Find("[data-stage=Furnace] > .presses button").Click();
        Row(page, WindowStage.Furnace, 5, ("quantity", "C"), ("least", "1"));
        page.Find("[data-testid=new-grade]").Submit();

        page.WaitForAssertion(() => Assert.Equal("window.twice", page.FindAll("[data-stage=Furnace] .window-row")[5].QuerySelector(".field-error")!.GetAttribute("data-code")), Patience);
    }

    [Fact]
    public void Row_WithAMarginOnly_IsNotLeftOutButAskedForABound()
    {
        var page = Open();
        Fill(page);
        Row(page, WindowStage.Poured, 3, ("margin", "0.002"));
        page.Find("[data-testid=new-grade]").Submit();

        page.WaitForAssertion(() => Assert.Equal("window.empty", page.Find("[data-stage=Poured] [data-row=Mg] [data-field$='.least'] .field-error").GetAttribute("data-code")), Patience);
    }

    [Fact]
    public async Task Recipe_OfADuctileGrade_AsksForWhatATreatmentNeedsAndThenStands()
    {
        await The<AddMaterial>().Run(Founder, new(
            Guid.NewGuid(), Now, "mgfesi", "Test alloy", MaterialKind.TreatmentAlloy, MaterialUses.Treatment, 1900, 100, [new("Mg", 6)], "test", "memory"), Cancellation);
        await The<AddMaterial>().Run(Founder, new(
            Guid.NewGuid(), Now, "punchings", "Test punchings", MaterialKind.Cover, MaterialUses.Treatment, 400, 100, [new("C", 0.05)], "test", "memory"), Cancellation);
        SignIn(Role.Metallurgist);
        var page = Render<GradeDetail>(parameters => parameters.Add(p => p.Id, DuctileId));
        page.Find("[data-testid=set-recipe]").Click();
        Type(page, "sulphurLeftPercent", "");
        page.Find("[data-testid=recipe-form]").Submit();
        page.WaitForAssertion(() => Assert.Equal("sulphur.missing", page.Find("[data-field='recipe.sulphurLeftPercent'] .field-error").GetAttribute("data-code")), Patience);
        Type(page, "sulphurLeftPercent", "0,007");
        page.Find("[data-field='recipe.treatmentAlloyCode'] select").Change("mgfesi");
        Assert.Equal("none is reckoned with", page.Find("[data-testid=recipe-cover]").TextContent);
        page.Find("[data-field='recipe.coverCode'] select").Change("punchings");
        page.Find("[data-testid=recipe-form]").Submit();
        page.WaitForAssertion(() => Assert.Equal("number.missing", page.Find("[data-field='recipe.coverRatePercent'] .field-error").GetAttribute("data-code")), Patience);
        Type(page, "coverRatePercent", "1,5");
        page.Find("[data-testid=recipe-form]").Submit();

        page.WaitForAssertion(() => Assert.Contains("Test alloy", page.Find("[data-testid=recipe] dl").TextContent, StringComparison.Ordinal), Patience);
        Assert.Equal("1.5\u00a0% Test punchings", page.Find("[data-testid=recipe-cover]").TextContent);
        Assert.Equal(new RecipeView(0.042, 0.035, 0.007, "mgfesi", null, 0.4, 12, "punchings", 1.5), (await The<GradesPage>().Grade(DuctileId, Cancellation))!.Recipe);
    }

    [Fact]
    public void Recipe_InAnotherLanguage_HasItsDecimalSignInTheHelpToo()
    {
        Speak("de-DE");
        SignIn(Role.Metallurgist);
        var page = Render<GradeDetail>(parameters => parameters.Add(p => p.Id, DuctileId));
        page.WaitForElement("[data-testid=set-recipe]", Patience).Click();

        Assert.EndsWith("1\u00a0% takes about 0,04\u00a0% of carbon away", page.Find("[data-field='recipe.coverRatePercent'] .field-note").TextContent.Trim(), StringComparison.Ordinal);
    }

    [Fact]
    public void NewGrade_ForAMelter_IsNotOffered()
    {
        SignIn(Role.Melter);

        Assert.NotNull(Render<NewGrade>().Find("[data-testid=read-only]"));
        Assert.Empty(Render<GradeList>().FindAll("a[href='/grades/new']"));
    }

    private IRenderedComponent<NewGrade> Open()
    {
        SignIn(Role.Metallurgist);
        return Render<NewGrade>();
    }

    private static void Fill(IRenderedComponent<NewGrade> page)
    {
        page.Find("[data-field=code] input").Change("EN-GJS-400-15");
        page.Find("[data-field=source] input").Change("from memory");
        page.Find("[data-field=family] select").Change(nameof(IronFamily.Ductile));
    }

    private static void Row(IRenderedComponent<NewGrade> page, WindowStage stage, int row, params (string Field, string Text)[] fields)
    {
        foreach (var (field, text) in fields)
            page.Do(() => page.FindAll($"[data-stage={stage}] .window-row")[row].QuerySelector($"[data-field$='.{field}'] :is(input, select)")!.ChangeAsync(text));
    }

    private static void Type(IRenderedComponent<GradeDetail> page, string field, string text) => page.Find($"[data-field='recipe.{field}'] input").Change(text);
}
