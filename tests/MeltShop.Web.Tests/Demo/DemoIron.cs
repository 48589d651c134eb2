using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Web.Demo;

namespace MeltShop.Web.Tests.Demo;

/// <summary>Iron of a demo grade, and what its ladle recipe makes of it.</summary>
internal static class DemoIron
{
    /// <summary>The ladle as the recipe supposes it, or a real one in its place.</summary>
    public sealed record Ladle(double IronKg, double MagnesiumRecoveryPercent, double FadePercentPerMinute);

    /// <summary>Furnace iron at the aims; where a row has none, at six tenths of its most.</summary>
    public static Analysis AtAims(DemoGrade grade) => Analysis.Of(
        grade.Furnace.Where(r => r.Quantity != "CE").Select(r => KeyValuePair.Create(Element.Parse(r.Quantity), r.Aim ?? 0.6 * r.Most!.Value)));

    public static LinearQuantity Quantity(DemoWindowRow row) =>
        row.Quantity == "CE" ? CarbonEquivalent.Default.Quantity : LinearQuantity.Of(Element.Parse(row.Quantity));

    /// <summary>The iron in the last mould: treated, covered, inoculated, its magnesium faded.</summary>
    public static (Analysis Poured, double PocketKg) Pour(DemoCatalogue catalogue, DemoGrade grade, Analysis furnace, Ladle ladle)
    {
        var iron = Metal.Of(ladle.IronKg, furnace);
        var pocketKg = 0.0;
        if (grade.Recipe.Treatment is { } recipe)
        {
            var result = MagnesiumTreatment.Solve(Problem(catalogue, recipe, furnace, ladle)) ?? throw new InvalidOperationException("The alloy cannot do it.");
            var coverKg = ladle.IronKg * recipe.CoverPercent / 100;
            iron = result.Iron.AtStart.Plus(Arrival.PerKilogram(catalogue.Material(recipe.CoverCode).Composition), coverKg);
            pocketKg = result.AlloyKg + coverKg;
        }

        var inoculation = grade.Recipe.Inoculation;
        iron = Inoculation.After(
            iron, catalogue.Material(inoculation.InoculantCode).Composition, Inoculation.InoculantKg(ladle.IronKg, inoculation.RatePercent));
        var poured = iron.Analysis;
        return grade.Recipe.Treatment is { } treated
            ? (poured.With(Element.Mg, poured.OrZero(Element.Mg) - ladle.FadePercentPerMinute * treated.AtMinutes), pocketKg)
            : (poured, pocketKg);
    }

    private static TreatmentProblem Problem(DemoCatalogue catalogue, DemoTreatment recipe, Analysis furnace, Ladle ladle) => new()
    {
        IronKg = ladle.IronKg,
        TemperatureC = 1480,
        BaseAnalysis = furnace,
        TargetMgPercent = recipe.TargetMagnesiumPercent,
        AtMinutes = recipe.AtMinutes,
        Recipe = new()
        {
            Alloy = catalogue.Material(recipe.AlloyCode).Composition,
            MgRecoveryPercent = ladle.MagnesiumRecoveryPercent,
            Fade = new Fade.Linear(ladle.FadePercentPerMinute),
            SulphurLeftPercent = recipe.SulphurLeftPercent,
        },
    };
}
