using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Heats;
using MeltShop.Records.Grades;

namespace MeltShop.Operations.Ladles;

/// <summary>The question "what goes into this ladle?", the same for the page that shows it and the operation that records it.</summary>
public static class PocketQuestion
{
    /// <summary>
    /// Magnesium that a coin of base iron may show without there being any, %: what the spark of an iron without magnesium reads
    /// (common practice, no source). More of it is refused.
    /// </summary>
    public const double MgOfBaseIron = 0.005;

    /// <summary>How far the mass that will be tapped may be off the plan, %: 5 % is normal (P.-M. Cabanne, S.G. Iron Conclave, Mumbai, 2011).</summary>
    public const double MassDoubtPercent = 5;

    /// <returns>The answer, or findings at the fields of the choice.</returns>
    public static (PocketAnswer? Answer, IReadOnlyList<Finding> Findings) Build(PocketFacts facts, PocketChoice choice)
    {
        var fields = new FieldCheck();
        fields.Check(choice);
        if (fields.Findings.Count > 0) return (null, fields.Findings);
        if (choice.PlannedKg > facts.AtMostKg)
        {
            fields.Add("plannedKg", "furnace.short", facts.InFurnaceKg);
        }

        var answer = facts.Family == IronFamily.Grey ? Grey(facts, choice, fields) : Ductile(facts, choice, fields);
        if (answer is null || fields.Findings.Count > 0) return (null, fields.Findings);
        answer = PocketAdditions.With(facts, choice, answer, fields);
        PocketRefusals.Check(facts, choice, answer, fields);
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
        fields.Percent("coverRatePercent", choice.Extras.CoverRatePercent);
        fields.Percent("streamRatePercent", choice.Extras.StreamRatePercent);
        fields.Percent("mouldRatePercent", choice.Extras.MouldRatePercent);
        if (choice.Extras.AlloyKg is { } kg) fields.Mass("alloyKg", kg);
        var lots = choice.Extras.Lots;
        foreach (var (path, lot) in new[] { ("alloyLot", lots.Alloy), ("coverLot", lots.Cover), ("inoculantLot", lots.Inoculant), ("pearliteLot", lots.Pearlite) })
        {
            fields.OptionalText(path, lot, 60);
        }

        if (choice.Extras is { CoverMaterialId: not null, CoverRatePercent: null }) fields.Add("coverRatePercent", "number.missing");
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

        var alloyKg = choice.Extras.AlloyKg ?? treatment.AlloyKg;
        var coverKg = problem.Cover?.Kg ?? 0;
        var isInPocket = !facts.IsDosedOnWeighedMass;
        var fill = facts.Ladle.FillLimitKg - alloyKg - coverKg;
        if (isInPocket && facts.Ladle.Process != LadleProcess.InMould && alloyKg + coverKg > facts.Ladle.PocketKg)
        {
            fields.Add("plannedKg", "pocket.full", alloyKg + coverKg, facts.Ladle.PocketKg);
        }

        if (choice.PlannedKg > fill) fields.Add("plannedKg", "ladle.overfilled", Whole(fill));
        var largest = MagnesiumTreatment.LargestIronKg(problem, alloyKg, floorPercent);
        return new(problem, treatment, Inoculation.InoculantKg(choice.PlannedKg, choice.InoculantRatePercent), isInPocket ? Math.Min(fill, largest) : fill, floorPercent)
        {
            AlloyKg = isInPocket ? alloyKg : null,
            Iron = MagnesiumTreatment.After(problem, alloyKg, choice.PlannedKg),
            LargestIronKg = isInPocket ? largest : null,
            CoverKg = problem.Cover?.Kg,
            RecoveryBand = facts.RecoveryBand,
            Band = facts.RecoveryBand is { } band
                ? TreatmentBand.Of(problem, alloyKg, MassDoubtPercent, band, (choice.TemperatureC, choice.TemperatureC)) : null,
        };
    }

    private static TreatmentProblem? Problem(PocketFacts facts, PocketChoice choice, FieldCheck fields)
    {
        var sulphur = choice.BaseSulphurPercent ?? facts.Bath[Element.S];
        var target = choice.TargetMgPercent ?? facts.Recipe?.TargetMgPercent;
        double? minutes = facts.Ladle.Process == LadleProcess.InMould ? 0 : choice.MinutesToLastMould ?? facts.Recipe?.MinutesToLastMould;
        if (sulphur is null) fields.Add("baseSulphurPercent", "sulphur.missing");
        if (target is null) fields.Add("targetMgPercent", "magnesium.missing");
        if (minutes is null) fields.Add("minutesToLastMould", "minutes.missing");
        if (facts.Recipe?.SulphurLeftPercent is null) fields.Add("gradeId", "recipe.sulphurLeftMissing");
        if (facts.Alloy is null && facts.Ladle.WireMgGramsPerMetre is null) fields.Add("alloyMaterialId", "material.unknown");
        if (facts.Bath.OrZero(Element.Mg) >= MgOfBaseIron) fields.Add("heatId", "base.magnesium", facts.Bath.OrZero(Element.Mg));
        if (fields.Findings.Count > 0) return null;

        var problem = new TreatmentProblem
        {
            IronKg = choice.PlannedKg,
            TemperatureC = choice.TemperatureC,
            BaseAnalysis = Analysis.Of(facts.Bath.Where(p => p.Key != Element.Mg)).With(Element.S, sulphur!.Value),
            TargetMgPercent = target!.Value,
            AtMinutes = minutes!.Value,
            Cover = facts.Cover is { } cover ? new(cover, choice.PlannedKg * (choice.Extras.CoverRatePercent ?? 0) / 100) : null,
            Recipe = Recipe(facts),
        };
        fields.AddAll(problem.Check());
        return fields.Findings.Count > 0 ? null : problem;
    }

    private static TreatmentRecipe Recipe(PocketFacts facts) => new()
    {
        // Magnesium has the recovery of the ladle, whatever the yard says of the alloy in a charge.
        Alloy = facts.Ladle.WireMgGramsPerMetre is null
            ? facts.Alloy! with { RecoveryPercent = facts.Alloy.RecoveryPercent.Where(r => r.Key != Element.Mg).ToDictionary() } : DoseQuestion.Wire,
        MgRecoveryPercent = facts.Ladle.MgRecoveryPercent,
        RecoveryTemperatureC = facts.Ladle.RecoveryTemperatureC,
        Fade = new Fade.Linear(facts.Ladle.MgFadePercentPerMinute),
        SulphurLeftPercent = facts.Recipe!.SulphurLeftPercent!.Value,
    };
}
