using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Grades;
using MeltShop.Web.Demo;

namespace MeltShop.Web.Tests.Demo;

/// <summary>The furnace window and the recipe together must give the poured window: they are entered side by side.</summary>
public class DemoWindowTests
{
    private static readonly DemoCatalogue Catalogue = DemoCatalogue.Load();

    public static TheoryData<string> Codes => [.. Catalogue.Grades.Select(g => g.Code)];

    public static TheoryData<string, string> Treatments =>
    [
        .. from grade in Catalogue.Grades where grade.Family == IronFamily.Ductile
           from ladle in Catalogue.Ladles
           select (grade.Code, ladle.Code),
    ];

    [Theory, MemberData(nameof(Codes))]
    public void FurnaceWindow_EachBoundThroughTheRecipe_LandsInsideThePouredWindow(string code)
    {
        var grade = Catalogue.Grade(code);
        foreach (var row in grade.Furnace)
        foreach (var bound in new[] { row.Least, row.Most }.OfType<double>())
        foreach (var sulphur in Sulphurs(grade))
        {
            var iron = Set(DemoIron.AtAims(grade).With(Element.S, sulphur), row, bound);
            var poured = DemoIron.Pour(Catalogue, grade, iron, Default(grade)).Poured;
            var wanted = grade.Poured.Single(r => r.Quantity == row.Quantity);
            var value = DemoIron.Quantity(wanted).Value(poured);

            Assert.True(
                value >= (wanted.Least ?? 0) - 1e-6 && value <= (wanted.Most ?? 100) + 1e-6,
                $"{row.Quantity} {bound} in the furnace with S {sulphur} pours {value}, wanted {wanted.Least} to {wanted.Most}");
        }
    }

    [Theory, MemberData(nameof(Codes))]
    public void FurnaceWindow_AimsThroughTheRecipe_LandOnThePouredAims(string code)
    {
        var grade = Catalogue.Grade(code);
        var poured = DemoIron.Pour(Catalogue, grade, DemoIron.AtAims(grade), Default(grade)).Poured;

        Assert.All(grade.Poured.Where(r => r.Aim is not null && r.Quantity != "CE"), row =>
            Assert.Equal(row.Aim!.Value, DemoIron.Quantity(row).Value(poured), row.Quantity is "Mg" or "S" ? 0.001 : 0.01));
    }

    [Theory, MemberData(nameof(Treatments))]
    public void Ladle_FilledToItsLimitFromTheAims_PoursInsideAndItsPocketHolds(string gradeCode, string ladleCode)
    {
        var grade = Catalogue.Grade(gradeCode);
        var ladle = Catalogue.Ladles.Single(l => l.Code == ladleCode);

        var (poured, pocketKg) = DemoIron.Pour(
            Catalogue, grade, DemoIron.AtAims(grade), new(ladle.LargestTreatedKg, ladle.MagnesiumRecoveryPercent, ladle.FadePercentPerMinute));

        Assert.All(grade.Poured, row => Assert.InRange(DemoIron.Quantity(row).Value(poured), row.Least ?? 0, row.Most ?? 100));
        Assert.InRange(pocketKg, 0.4 * ladle.PocketKg, ladle.PocketKg);
    }

    private static double[] Sulphurs(DemoGrade grade) => grade.Family == IronFamily.Ductile ? [0.004, 0.014] : [0.075];

    private static DemoIron.Ladle Default(DemoGrade grade) =>
        new(1000, grade.Recipe.Treatment?.MagnesiumRecoveryPercent ?? 0, grade.Recipe.Treatment?.FadePercentPerMinute ?? 0);

    /// <summary>Puts a quantity at a bound; the carbon equivalent by carbon.</summary>
    private static Analysis Set(Analysis iron, DemoWindowRow row, double bound)
    {
        if (row.Quantity != "CE") return iron.With(Element.Parse(row.Quantity), bound);
        return iron.With(Element.C, iron.OrZero(Element.C) + bound - DemoIron.Quantity(row).Value(iron));
    }
}
