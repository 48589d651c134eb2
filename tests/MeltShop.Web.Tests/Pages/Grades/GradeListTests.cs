using Bunit;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Grades;
using MeltShop.Web.Tests.Texts;
using MeltShop.Web.Texts;

namespace MeltShop.Web.Tests.Pages.Grades;

public sealed class GradeListTests : GradeTest
{
    [Fact]
    public void Grades_Opened_ShowBothWindowsBesideTheMinima()
    {
        var page = Open();
        var row = page.Find("tr[data-grade=EN-GJS-500-7]");

        Assert.Contains("Furnace iron, before treatment", page.Find("thead").TextContent, StringComparison.Ordinal);
        Assert.Equal(["3.60–3.80", "–", "≤ 0.40", "3.50–3.70", "–", "–", "0.035–0.060"], row.QuerySelectorAll("td").Take(7).Select(cell => cell.TextContent));
        // EN 1563:1997, walls up to 30 mm: 500 MPa, 320 MPa, 7 %.
        Assert.Equal("500 · 320 · 7", row.QuerySelector("[data-testid=minima]")!.TextContent);
    }

    [Fact]
    public void Grades_InThePseudoLanguage_HaveNoWordOutsideTheirTexts()
    {
        Speak(PseudoLanguage.Culture);

        Assert.Empty(Marks.WordsOutside(Open().Nodes, "EN-GJS-500-7", "EN-GJL-250", "Si", "Mn", "Mg", "C"));
    }

    private IRenderedComponent<GradeList> Open()
    {
        SignIn(Role.Melter);
        var page = Render<GradeList>();
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0);
        return page;
    }
}
