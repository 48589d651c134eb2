using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Grades;
using MeltShop.Records.Yard;
using MeltShop.Web.Demo;

namespace MeltShop.Web.Tests.Demo;

public class DemoGradesTests
{
    private static readonly DemoCatalogue Catalogue = DemoCatalogue.Load();

    public static TheoryData<string> Codes => [.. Catalogue.Grades.Select(g => g.Code)];

    [Theory]
    [InlineData("EN-GJS-400-15"), InlineData("EN-GJS-500-7"), InlineData("EN-GJS-600-3"), InlineData("EN-GJS-700-2")]
    [InlineData("EN-GJL-200"), InlineData("EN-GJL-250"), InlineData("EN-GJL-300"), InlineData("EN-GJS-400-18-LT")]
    public void Grade_OfTheStandard_HasBothWindowsAndMinima(string code)
    {
        var grade = Catalogue.Grade(code);

        foreach (var quantity in new[] { "C", "Si", "Mn", "P", "S", "CE" })
        {
            Assert.Single(grade.Poured, r => r.Quantity == quantity);
            Assert.Single(grade.Furnace, r => r.Quantity == quantity);
        }

        Assert.NotEmpty(grade.Mechanical.Minima);
        Assert.NotEmpty(grade.Source);
        Assert.NotEmpty(grade.Recipe.Source);
    }

    [Theory, MemberData(nameof(Codes))]
    public void Window_EveryRow_IsOrderedAndLeavesRoomForItsMargin(string code)
    {
        var grade = Catalogue.Grade(code);

        Assert.All(grade.Poured.Concat(grade.Furnace), row =>
        {
            Assert.True(row.Quantity == "CE" || Element.TryParse(row.Quantity, out _), row.Quantity);
            Assert.True(row.Margin > 0);
            Assert.True(row.Least is not null || row.Most is not null);
            var (low, high) = ((row.Least ?? 0) + row.Margin, (row.Most ?? 100) - row.Margin);
            Assert.True(low < high, $"{row.Quantity}: nothing left between the margins");
            if (row.Aim is { } aim) Assert.InRange(aim, low, high);
        });
    }

    [Theory, MemberData(nameof(Codes))]
    public void Grade_MagnesiumAndTreatment_BelongToDuctileIronOnly(string code)
    {
        var grade = Catalogue.Grade(code);
        var ductile = grade.Family == IronFamily.Ductile;

        Assert.Equal(ductile, grade.Poured.Any(r => r.Quantity == "Mg"));
        Assert.Equal(ductile, grade.Recipe.Treatment is not null);
        Assert.DoesNotContain(grade.Furnace, r => r.Quantity == "Mg");
        Assert.Equal(MaterialKind.Inoculant, Catalogue.Material(grade.Recipe.Inoculation.InoculantCode).Kind);
        if (grade.Recipe.Treatment is not { } treatment) return;
        Assert.Equal(MaterialKind.TreatmentAlloy, Catalogue.Material(treatment.AlloyCode).Kind);
        Assert.Equal(MaterialKind.Cover, Catalogue.Material(treatment.CoverCode).Kind);
    }

    /// <summary>Carbon equivalent and elements must be one iron: the row's aim is what the aims of carbon, silicon and phosphorus give.</summary>
    [Theory, MemberData(nameof(Codes))]
    public void Window_AimOfCarbonEquivalent_IsThatOfCarbonAndSilicon(string code)
    {
        foreach (var window in new[] { Catalogue.Grade(code).Poured, Catalogue.Grade(code).Furnace })
        {
            double Aim(string quantity) => window.Single(r => r.Quantity == quantity).Aim ?? throw new InvalidOperationException($"{quantity} has no aim");
            var phosphorus = 0.7 * window.Single(r => r.Quantity == "P").Most!.Value;

            Assert.Equal(Aim("C") + (Aim("Si") + phosphorus) / 3, Aim("CE"), 0.03);
        }
    }

    /// <summary>
    /// Minima: EN 1563:1997 up to 30 mm and EN 1561:1997, separately cast bar, read in copies (EN-GJL-300 from memory).
    /// </summary>
    [Theory]
    [InlineData("EN-GJS-400-15", 400, 250, 15)]
    [InlineData("EN-GJS-400-18-LT", 400, 240, 18)]
    [InlineData("EN-GJS-500-7", 500, 320, 7)]
    [InlineData("EN-GJS-600-3", 600, 370, 3)]
    [InlineData("EN-GJS-700-2", 700, 420, 2)]
    [InlineData("EN-GJL-200", 200, null, null)]
    [InlineData("EN-GJL-250", 250, null, null)]
    [InlineData("EN-GJL-300", 300, null, null)]
    public void Minima_OfTheFirstSample_AreThoseOfTheStandard(string code, double tensile, int? proof, int? elongation)
    {
        var first = Catalogue.Grade(code).Mechanical.Minima[0];

        Assert.Equal((tensile, proof, elongation), (first.TensileStrengthMpa, first.ProofStrengthMpa, first.ElongationPercent));
    }

    /// <summary>Normal strength of a 30 mm bar, 1000 − 800 Sc N/mm²: Giesserei-Praxis, lexicon, degree of saturation, undated, read in an excerpt.</summary>
    [Theory]
    [InlineData("EN-GJL-200"), InlineData("EN-GJL-250"), InlineData("EN-GJL-300")]
    public void GreyGrade_NormalStrengthAtTheAim_ReachesTheMinimumOfTheBar(string code)
    {
        var grade = Catalogue.Grade(code);
        double Aim(string quantity) => grade.Poured.Single(r => r.Quantity == quantity).Aim!.Value;
        var saturation = Aim("C") / (Aim("C") + 4.26 - Aim("CE"));

        Assert.InRange(1000 - 800 * saturation, grade.Mechanical.Minima[0].TensileStrengthMpa, grade.Mechanical.Minima[0].TensileStrengthMpa + 40);
    }
}
