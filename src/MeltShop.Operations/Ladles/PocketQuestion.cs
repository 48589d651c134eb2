using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Heats;
using MeltShop.Records.Grades;

namespace MeltShop.Operations.Ladles;

/// <summary>What goes into a ladle before the tap.</summary>
/// <param name="Problem">The treatment as it was worked out; null for grey iron.</param>
/// <param name="Treatment">Its answer; null for grey iron.</param>
/// <param name="InoculantKg">Inoculant for the planned mass, kg.</param>
/// <param name="StopWeightKg">Greatest mass to tap, kg: the magnesium floor at the last mould and the fill limit both hold.</param>
/// <param name="MgFloorPercent">The floor that it keeps, %; null for grey iron.</param>
public sealed record PocketAnswer(
    TreatmentProblem? Problem, TreatmentResult? Treatment, double InoculantKg, double StopWeightKg, double? MgFloorPercent);

/// <summary>The question "what goes into this ladle?", the same for the page that shows it and the operation that records it.</summary>
public static class PocketQuestion
{
    /// <summary>
    /// Magnesium that a coin of base iron may show without there being any, %: what the spark of an iron without magnesium reads
    /// (common practice, no source). More of it is refused.
    /// </summary>
    public const double MgOfBaseIron = 0.005;

    /// <returns>The answer, or findings at the fields of the choice.</returns>
    public static (PocketAnswer? Answer, IReadOnlyList<Finding> Findings) Build(PocketFacts facts, PocketChoice choice)
    {
        var fields = new FieldCheck();
        fields.Check(choice);
        if (fields.Findings.Count > 0) return (null, fields.Findings);
        if (choice.PlannedKg > facts.InFurnaceKg + FurnaceLedger.Uncertainty * facts.HandledKg)
        {
            fields.Add("plannedKg", "furnace.short", facts.InFurnaceKg);
        }

        var answer = facts.Family == IronFamily.Grey ? Grey(facts, choice, fields) : Ductile(facts, choice, fields);
        return fields.Findings.Count > 0 ? (null, fields.Findings) : (answer, []);
    }

    /// <summary>What the pocket made of the mass really tapped; the alloy in it is what it is.</summary>
    /// <param name="temperatureC">Measured at the tap, °C; null for the planned one.</param>
    public static TreatedIron AfterTap(TreatmentProblem problem, double alloyKg, double tappedKg, double? temperatureC) =>
        MagnesiumTreatment.After(problem with { TemperatureC = temperatureC ?? problem.TemperatureC }, alloyKg, tappedKg);

    /// <summary>Inoculant for the mass really tapped, kg: the rate of the card stays.</summary>
    public static double InoculantKg(double cardInoculantKg, double plannedKg, double tappedKg) => cardInoculantKg * tappedKg / plannedKg;

    internal static void Check(this FieldCheck fields, PocketChoice choice)
    {
        fields.Mass("plannedKg", choice.PlannedKg);
        fields.Temperature("temperatureC", choice.TemperatureC);
        fields.Percent("baseSulphurPercent", choice.BaseSulphurPercent);
        fields.Percent("targetMgPercent", choice.TargetMgPercent);
        fields.Percent("mgFloorPercent", choice.MgFloorPercent);
        if (choice.MinutesToLastMould is { } minutes) fields.NotNegative("minutesToLastMould", minutes);
        fields.Percent("inoculantRatePercent", choice.InoculantRatePercent);
    }

    private static PocketAnswer Grey(PocketFacts facts, PocketChoice choice, FieldCheck fields)
    {
        if (choice.TargetMgPercent is not null) fields.Add("targetMgPercent", "magnesium.inGreyIron");
        if (choice.PlannedKg > facts.Ladle.FillLimitKg) fields.Add("plannedKg", "ladle.overfilled", Whole(facts.Ladle.FillLimitKg));
        return new(null, null, Inoculation.InoculantKg(choice.PlannedKg, choice.InoculantRatePercent), facts.Ladle.FillLimitKg, null);
    }

    /// <summary>A limit as it is told: whole kilograms downwards, so that what is told always fits.</summary>
    private static double Whole(double kg) => Math.Floor(kg);

    private static PocketAnswer? Ductile(PocketFacts facts, PocketChoice choice, FieldCheck fields)
    {
        var floor = choice.MgFloorPercent ?? facts.Recipe?.MgFloorPercent;
        if (floor is not > 0) fields.Add("mgFloorPercent", "magnesium.missing");
        if (Problem(facts, choice, fields) is not { } problem || floor is not { } floorPercent) return null;
        if (problem.TargetMgPercent < floor) fields.Add("targetMgPercent", "magnesium.targetBelowFloor", problem.TargetMgPercent, floorPercent);
        if (MagnesiumTreatment.Solve(problem) is not { } treatment)
        {
            fields.Add("targetMgPercent", "treatment.infeasible");
            return null;
        }

        var ladle = facts.Ladle;
        var fill = ladle.FillLimitKg - treatment.AlloyKg;
        if (treatment.AlloyKg > ladle.PocketKg) fields.Add("plannedKg", "pocket.full", treatment.AlloyKg, ladle.PocketKg);
        if (choice.PlannedKg > fill) fields.Add("plannedKg", "ladle.overfilled", Whole(fill));
        var stop = Math.Min(fill, MagnesiumTreatment.LargestIronKg(problem, treatment.AlloyKg, floorPercent));
        return new(problem, treatment, Inoculation.InoculantKg(choice.PlannedKg, choice.InoculantRatePercent), stop, floorPercent);
    }

    private static TreatmentProblem? Problem(PocketFacts facts, PocketChoice choice, FieldCheck fields)
    {
        var sulphur = choice.BaseSulphurPercent ?? facts.Bath[Element.S];
        var target = choice.TargetMgPercent ?? facts.Recipe?.TargetMgPercent;
        var minutes = choice.MinutesToLastMould ?? facts.Recipe?.MinutesToLastMould;
        if (sulphur is null) fields.Add("baseSulphurPercent", "sulphur.missing");
        if (target is null) fields.Add("targetMgPercent", "magnesium.missing");
        if (minutes is null) fields.Add("minutesToLastMould", "minutes.missing");
        if (facts.Recipe?.SulphurLeftPercent is null) fields.Add("gradeId", "recipe.sulphurLeftMissing");
        if (facts.Alloy is null) fields.Add("alloyMaterialId", "material.unknown");
        if (facts.Bath.OrZero(Element.Mg) >= MgOfBaseIron) fields.Add("heatId", "base.magnesium", facts.Bath.OrZero(Element.Mg));
        if (fields.Findings.Count > 0) return null;

        var problem = new TreatmentProblem
        {
            IronKg = choice.PlannedKg,
            TemperatureC = choice.TemperatureC,
            BaseAnalysis = Analysis.Of(facts.Bath.Where(p => p.Key != Element.Mg)).With(Element.S, sulphur!.Value),
            TargetMgPercent = target!.Value,
            AtMinutes = minutes!.Value,
            Recipe = Recipe(facts),
        };
        fields.AddAll(problem.Check());
        return fields.Findings.Count > 0 ? null : problem;
    }

    private static TreatmentRecipe Recipe(PocketFacts facts) => new()
    {
        // Magnesium has the recovery of the ladle, whatever the yard says of the alloy in a charge.
        Alloy = facts.Alloy! with { RecoveryPercent = facts.Alloy.RecoveryPercent.Where(r => r.Key != Element.Mg).ToDictionary() },
        MgRecoveryPercent = facts.Ladle.MgRecoveryPercent,
        RecoveryTemperatureC = facts.Ladle.RecoveryTemperatureC,
        Fade = new Fade.Linear(facts.Ladle.MgFadePercentPerMinute),
        SulphurLeftPercent = facts.Recipe!.SulphurLeftPercent!.Value,
    };
}
