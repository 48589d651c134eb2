using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>The treatment of one ladle, before the tap (which alloy?) and after it (what came out?).</summary>
public static class MagnesiumTreatment
{
    private const int MostRounds = 50;

    /// <summary>The alloy for a ladle; null where no mass of this alloy reaches the target (status infeasible).</summary>
    /// <param name="problem">Free of findings: <see cref="TreatmentProblem.Check"/>.</param>
    public static TreatmentResult? Solve(TreatmentProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var covered = Covered(problem, Metal.Of(problem.IronKg, problem.BaseAnalysis));
        var ratio = Ratio(problem, problem.TargetMgPercent, problem.AtMinutes, covered.Percent(Element.S));
        if (ratio is not { } perKilogram || !double.IsFinite(perKilogram)) return null;
        var alloyKg = covered.Kg * perKilogram;
        IReadOnlyList<Element> assumed = problem.BaseAnalysis.Has(Element.S) ? [] : [Element.S];
        return new TreatmentResult(alloyKg, 100 * alloyKg / problem.IronKg, After(problem, alloyKg, problem.IronKg), assumed);
    }

    /// <summary>After the tap: what the alloy in the pocket made of the iron really tapped. The alloy is never worked out anew.</summary>
    /// <param name="problem">The recipe, temperature and base iron; its planned mass is not used.</param>
    /// <param name="alloyKg">Alloy really in the pocket, kg.</param>
    /// <param name="ironKg">Iron really tapped, kg, over 0.</param>
    public static TreatedIron After(TreatmentProblem problem, double alloyKg, double ironKg)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var before = Metal.Of(ironKg, problem.BaseAnalysis);
        var after = TreatmentBalance.After(Covered(problem, before), problem.Recipe.ArrivalAt(problem.TemperatureC), alloyKg, problem.Recipe.SulphurLeftPercent);
        return new TreatedIron(after, before, problem.Recipe.Fade);
    }

    /// <summary>The largest mass of iron that a pocket still serves: a heavier tap falls below the floor before the last mould is full.</summary>
    /// <param name="problem">The recipe, temperature, base iron and minutes; its mass and target are not used.</param>
    /// <param name="alloyKg">Alloy in the pocket, kg.</param>
    /// <param name="floorMgPercent">Least magnesium at the end of the pour, %, over 0.</param>
    /// <returns>Kilograms; 0 where this alloy cannot reach the floor in any mass.</returns>
    public static double LargestIronKg(TreatmentProblem problem, double alloyKg, double floorMgPercent)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return Serves(problem, alloyKg, floorMgPercent, problem.AtMinutes);
    }

    /// <summary>The smallest mass of iron for a pocket: a lighter tap starts above the most magnesium allowed.</summary>
    /// <param name="problem">The recipe, temperature and base iron; its mass, target and minutes are not used.</param>
    /// <param name="alloyKg">Alloy in the pocket, kg.</param>
    /// <param name="mostMgPercent">Most magnesium at minute 0, %, over 0.</param>
    /// <returns>Kilograms; 0 where this alloy cannot exceed it in any mass.</returns>
    public static double SmallestIronKg(TreatmentProblem problem, double alloyKg, double mostMgPercent)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return Serves(problem, alloyKg, mostMgPercent, minutes: 0);
    }

    // The cover's own sulphur moves what the mixture needs by parts in a thousand: a few rounds settle it.
    private static double Serves(TreatmentProblem problem, double alloyKg, double mgPercent, double minutes)
    {
        double? Treated(double sulphurPercent) => Ratio(problem, mgPercent, minutes, sulphurPercent) is > 0 and var perKilogram ? alloyKg / perKilogram : null;
        if (Treated(problem.BaseAnalysis.OrZero(Element.S)) is not { } ironKg) return 0;
        if (problem.Cover is not { } cover) return ironKg;
        var coverKg = cover.Into(Metal.None).Kg;
        for (var round = 0; round < MostRounds; round++)
        {
            if (Treated(Covered(problem, Metal.Of(ironKg, problem.BaseAnalysis)).Percent(Element.S)) is not { } treatedKg || treatedKg <= coverKg) return 0;
            var next = treatedKg - coverKg;
            if (Math.Abs(next - ironKg) <= 1e-12 * next) return next;
            ironKg = next;
        }

        return ironKg;
    }

    private static Metal Covered(TreatmentProblem problem, Metal iron) => problem.Cover?.Into(iron) ?? iron;

    private static double? Ratio(TreatmentProblem problem, double mgPercent, double minutes, double sulphurPercent) =>
        TreatmentBalance.AlloyPerKilogram(
            problem.Recipe.ArrivalAt(problem.TemperatureC), problem.Recipe.Fade.Before(mgPercent, minutes), sulphurPercent, problem.Recipe.SulphurLeftPercent);
}
