using MeltShop.Charging.Problems;
using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Heat;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Checking;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;

namespace MeltShop.Operations.Correcting;

/// <summary>The question "which additions?", the same for the page that proposes live and the operation that keeps the correction.</summary>
public static class CorrectionQuestion
{
    /// <summary>
    /// Share of the yard's price that stays in a goal that is not about money: of two ways that are equally good it takes the cheaper one.
    /// </summary>
    private const double Tie = 1e-3;

    /// <returns>The problem, or findings at the fields of the choice.</returns>
    public static (CorrectionProblem? Problem, IReadOnlyList<Finding> Findings) Build(CorrectionFacts facts, CorrectionChoice choice) =>
        Build(facts, choice, facts.View.Grade);

    /// <summary>The same for another grade: what else this bath could become.</summary>
    public static (CorrectionProblem? Problem, IReadOnlyList<Finding> Findings) Build(CorrectionFacts facts, CorrectionChoice choice, GradeView grade)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var fields = new FieldCheck();
        fields.Check(choice);
        var bath = facts.Bath.Metal;
        var capacity = facts.View.Heat.CapacityKg;
        if (bath.Kg <= 0) fields.Add("", "bath.empty");
        if (!facts.Bath.IsCarbonMeasured) fields.Add("", "bath.greyCarbon");
        if (bath.Kg - choice.MaxTapOffKg > capacity) fields.Add("maxTapOffKg", "bath.overCapacity", bath.Kg, capacity);
        var limits = ChargeLimits.Of([.. grade.At(WindowStage.Furnace).SelectMany(TargetRow.Of)], [], Nearness(choice), fields);
        if (limits.Count == 0) fields.Add("", "grade.noWindow", grade.Code);
        var additions = facts.View.Materials.Where(m => choice.LeftOut?.Contains(m.Code) != true).Select(m => Addition(m, choice)).OfType<ChargeMaterial>().ToList();
        if (additions.Count == 0) fields.Add("", "yard.empty");
        if (fields.Findings.Count > 0) return (null, fields.Findings);

        return (new CorrectionProblem
        {
            Bath = bath,
            TemperatureC = choice.TemperatureC,
            Additions = additions,
            Limits = bath.IsInside(limits) ? [.. limits.Select(l => l with { Nearness = null })] : limits,
            CapacityKg = capacity,
            MaxTapOffKg = choice.MaxTapOffKg,
            TapOffCostPerTonne = choice.MaxTapOffKg > 0 ? TapOff(choice) : null,
        }, []);
    }

    internal static void Check(this FieldCheck fields, CorrectionChoice choice)
    {
        fields.Temperature("temperatureC", choice.TemperatureC);
        fields.Choice("goal", choice.Goal);
        fields.MassOrZero("maxTapOffKg", choice.MaxTapOffKg);
        if (choice.LeastAdditionKg is { } least) fields.Mass("leastAdditionKg", least);
        if (choice.NearnessPrice is { } price) fields.NotNegative("nearnessPrice", price);
        if (choice.TapOffCostPerTonne is { } cost)
        {
            fields.Positive("tapOffCostPerTonne", (double)cost);
            fields.Money("tapOffCostPerTonne", cost);
        }
        else if (choice.MaxTapOffKg > 0)
        {
            fields.Add("tapOffCostPerTonne", "price.missing");
        }
    }

    /// <summary>Null where it cannot serve: nothing there, something of it not known (as in a charge), or no heat known and heat is the goal.</summary>
    private static ChargeMaterial? Addition(MaterialView material, CorrectionChoice choice)
    {
        if (material.StockKg is <= 0 || ChargeMaterials.Gap(material, RecoveryStage.Bath) is not null || material.Analysis is null) return null;
        var heat = AdditionGuide.KWhPerTonne(material.Analysis.Analysis(), choice.TemperatureC);
        var price = (double)material.PricePerTonne;
        double? weight = choice.Goal switch
        {
            CorrectionGoal.Cost => price,
            CorrectionGoal.Kilograms => 1000 + (Tie * price),
            // What heats the bath is no reason to add more of it.
            _ => heat is { } known ? Math.Max(0, known) + (Tie * price) : null,
        };
        return weight is not { } least ? null : new ChargeMaterial
        {
            Code = material.Code,
            PricePerTonne = least,
            Composition = material.Composition(RecoveryStage.Bath),
            AvailableKg = material.StockKg,
            PieceKg = material.PieceKg,
            LeastIfUsedKg = choice.LeastAdditionKg,
            HeatKWhPerTonne = heat,
        };
    }

    // A bath that is inside by its margins is left alone, wherever its aims are.
    private static bool IsInside(this Metal bath, IReadOnlyList<QuantityLimit> limits) => limits.All(l =>
        l.Quantity.Value(bath.Analysis) is var value && !(value < l.Min + l.Margin) && !(value > l.Max - l.Margin));

    private static double? Nearness(CorrectionChoice choice) => choice.Goal == CorrectionGoal.Cost ? choice.NearnessPrice : Tie * choice.NearnessPrice;

    private static double TapOff(CorrectionChoice choice) => choice.Goal switch
    {
        CorrectionGoal.Cost => (double)choice.TapOffCostPerTonne!,
        CorrectionGoal.Kilograms => 1000 + (Tie * (double)choice.TapOffCostPerTonne!),
        _ => Tie * (double)choice.TapOffCostPerTonne!,
    };
}
