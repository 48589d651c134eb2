using Bunit;
using MeltShop.Operations.Grades;
using MeltShop.Operations.Sites;
using MeltShop.Operations.Yard;
using MeltShop.Records.Grades;
using MeltShop.Records.People;
using MeltShop.Records.Yard;

namespace MeltShop.Web.Tests.Pages.Charge;

/// <summary>A charge that is planned for the poured iron: back through treatment and inoculation, by the recipe of the grade.</summary>
public sealed class PouredTargetTests : ChargeTest
{
    [Fact]
    public async Task Target_PouredIron_TurnsTheWindowBackAndSaysWhich()
    {
        await The<AddGrade>().Run(Founder, new(
            Guid.NewGuid(), Now, "EN-GJL-250", IronFamily.Grey, "Test figures",
            [new(WindowStage.Furnace, "C", 3.2, 3.3, 3.45, 0.02), new(WindowStage.Furnace, "Mn", null, 0.4, 0.6, 0.02), new(WindowStage.Poured, "C", 3.15, 3.3, 3.45), new(WindowStage.Poured, "Si", 1.7, 1.9, 2.2), new(WindowStage.Poured, "CE", 3.5, 3.9, 4.4)],
            new(null, null, null, null, "inoculant", 0.2, null)), Cancellation);
        await Add("inoculant", MaterialKind.Inoculant, 2100, 100, new MaterialPercentInput("Si", 72));
        SignIn(Role.Metallurgist);
        var page = Open("/charge?furnace=F1&grade=EN-GJL-250&kg=3000", Role.Metallurgist);
        WaitForPlan(page);
        Assert.Equal(["C", "Mn"], page.FindAll("[data-limit]").Select(row => row.GetAttribute("data-limit")));
        Choose(page, "target", "Poured");
        page.WaitForState(() => page.FindAll("[data-limit=Si]").Count > 0, Patience);

        Assert.DoesNotContain("Counted in the poured iron", page.Find("[data-limit=Si]").TextContent, StringComparison.Ordinal);
        Assert.Contains("In the furnace iron; poured: least 1.70\u00a0% · most 2.20\u00a0%.", page.Find("[data-limit=Si]").TextContent, StringComparison.Ordinal);
        Assert.Contains("1.56", page.Find("[data-limit=Si] .limit-figures").TextContent, StringComparison.Ordinal); // 1.7 · 1.002 − 0.2 · 0.72
        Assert.StartsWith("Counted in the poured iron.", page.Find("[data-limit=CE] .limit-words").TextContent, StringComparison.Ordinal);
        Assert.Contains("most 4.40", page.Find("[data-limit=CE] .limit-figures").TextContent, StringComparison.Ordinal);
        Change(page, "carbon equivalent CE");
        Assert.Contains("the grade says 4.4\u00a0% of the poured iron", Field(page, "limits.CE.most").TextContent, StringComparison.Ordinal);
        Change(page, "Si");
        Assert.Contains("% of the furnace iron at the most sulphur, turned back from the poured window", Field(page, "limits.Si.most").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("oured", page.Find("[data-limit=Mn] .limit-words").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Target_PouredDuctileIron_SaysWithWhichCoverSteelItIsReckonedOrThatItIsWithNone()
    {
        foreach (var (code, cover) in new[] { ("EN-GJS-400-15", (string?)"punchings"), ("EN-GJS-600-3", null) })
        {
            await The<AddGrade>().Run(Founder, new(
                Guid.NewGuid(), Now, code, IronFamily.Ductile, "Test figures", [new(WindowStage.Furnace, "S", null, null, 0.02), new(WindowStage.Poured, "C", 3.15, 3.3, 3.45)],
                new(0.04, 0.03, 0.006, "mgfesi", "inoculant", 0.4, 10, cover, cover is null ? null : 1.5)), Cancellation);
        }

        await Add("punchings", MaterialKind.Cover, 400, 100, new MaterialPercentInput("C", 0.05));
        await Add("mgfesi", MaterialKind.TreatmentAlloy, 1900, 100, new MaterialPercentInput("Mg", 6));
        await Add("inoculant", MaterialKind.Inoculant, 2100, 100, new MaterialPercentInput("Si", 72));
        SignIn(Role.Metallurgist);
        var page = Open("/charge?furnace=F1&grade=EN-GJS-400-15&kg=3000", Role.Metallurgist);
        Choose(page, "target", "Poured");
        page.WaitForAssertion(() => Assert.Contains("with 1.5\u00a0% of cover steel: Test punchings", Field(page, "target").TextContent, StringComparison.Ordinal), Patience);
        Choose(page, "gradeId", "EN-GJS-600-3");
        page.WaitForAssertion(() => Assert.Contains(
            "it names no cover steel and none is reckoned with: 1\u00a0% of it takes about 0.04\u00a0% of carbon away", Field(page, "target").TextContent, StringComparison.Ordinal), Patience);
    }

    [Fact]
    public async Task Clash_OfAPouredTarget_SaysForWhichSulphurItsElementsStand()
    {
        await The<AddGrade>().Run(Founder, new(
            Guid.NewGuid(), Now, "EN-GJS-400-15", IronFamily.Ductile, "Test figures",
            [new(WindowStage.Furnace, "S", null, null, 0.02), new(WindowStage.Poured, "C", 3.15, 3.3, 3.45), new(WindowStage.Poured, "Si", 2.3, 2.5, 2.7)],
            new(0.04, 0.03, 0.006, "mgfesi", "inoculant", 0.4, 10, null, null)), Cancellation);
        await Add("mgfesi", MaterialKind.TreatmentAlloy, 1900, 100, new MaterialPercentInput("Mg", 6), new MaterialPercentInput("Si", 45));
        await Add("inoculant", MaterialKind.Inoculant, 2100, 100, new MaterialPercentInput("Si", 72));
        await The<AddLadle>().Run(Founder, new(Guid.NewGuid(), Now, "L1", "Ladle 1", "sandwich", 1100, 40, 50, null, 0.001, 5, "invented for a test"), Cancellation);
        SignIn(Role.Metallurgist);
        var page = Open("/charge?furnace=F1&grade=EN-GJS-400-15&kg=3000&wish=out@materials.fesi&wish=out@materials.inoculant", Role.Metallurgist);
        Choose(page, "target", "Poured");

        page.WaitForState(() => page.FindAll("[data-clash=Si]").Count > 0, Patience);
        Assert.StartsWith("Planned for the poured iron: Si stands here as for a bath with the most sulphur that is allowed.", page.Find("[data-testid=most-sulphur]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Target_PouredIronOfAnIncompleteRecipe_SaysWhatIsMissing()
    {
        var page = OpenPlanned(Role.Metallurgist);
        Choose(page, "target", "Poured");

        page.WaitForAssertion(() => Assert.Equal("recipe.noInoculant", Field(page, "target").QuerySelector(".field-error")!.GetAttribute("data-code")), Patience);
    }
}
