using MeltShop.Charging.Problems;
using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Grades;

namespace MeltShop.Operations.Charging;

/// <summary>The question "which charge?", the same for the page that plans live and the operation that keeps the plan.</summary>
public static class ChargeQuestion
{
    /// <summary>Names of the rooms that a charge may have to fit in.</summary>
    public const string FurnaceRoom = "furnace", BucketRoom = "bucket";

    /// <returns>The problem, or findings at the fields of the choice: <c>materials.CODE.maxKg</c>, <c>limits.Si.least</c>, <c>meltKg</c>, …</returns>
    public static (ChargeProblem? Problem, IReadOnlyList<Finding> Findings) Build(ChargeView data, ChargeChoice choice)
    {
        var fields = new FieldCheck();
        var furnace = data.Furnaces.SingleOrDefault(f => f.Id == choice.FurnaceId);
        choice = choice with { Wishes = choice.Wishes.Over(data.Rule) with { FurnaceM3 = choice.Wishes.FurnaceM3 ?? furnace?.ColdChargeM3 } };
        fields.Check(choice);
        fields.CheckWhole(choice.Wishes);
        var grade = data.Grades.SingleOrDefault(g => g.Id == choice.GradeId);
        if (furnace is null) fields.Add("furnaceId", "furnace.unknown");
        if (grade is null) fields.Add("gradeId", "grade.unknown");
        else fields.CheckAdded(grade, choice);
        CheckNames(data, choice, fields);
        if (furnace is null || grade is null || fields.Findings.Count > 0) return (null, fields.Findings);

        var heel = Heel(furnace, choice, fields);
        var materials = ChargeMaterials.Of(data.Materials, choice, fields);
        var groups = ChargeGroups.Of(data.Materials, materials, choice.Groups, fields);
        var limits = ChargeLimits.Of(Rows(data, grade, choice, fields), choice.Limits ?? [], choice.Wishes.NearnessPrice, fields);
        if (choice.MeltKg > furnace.CapacityKg) fields.Add("meltKg", "furnace.capacity", furnace.CapacityKg);
        else if (choice.MeltKg + choice.MeltToleranceKg > furnace.CapacityKg) fields.Add("meltToleranceKg", "furnace.noRoom", furnace.CapacityKg, furnace.CapacityKg - choice.MeltKg);
        if (materials.Count == 0) fields.Add("materials", "yard.empty");
        if (heel is null || fields.Findings.Count > 0) return (null, fields.Findings);

        return (new ChargeProblem
        {
            MeltKg = choice.MeltKg,
            MeltToleranceKg = choice.MeltToleranceKg,
            Heel = heel,
            Materials = materials,
            Limits = limits,
            ConfidencePercent = choice.ConfidencePercent,
            Groups = groups,
            Volumes = [.. Volumes(choice.Wishes)],
            SlagCostPerTonne = choice.Wishes.SlagCostPerTonne ?? 0,
            EnergyPricePerKWh = choice.Wishes.EnergyPricePerKWh ?? 0,
        }, []);
    }

    /// <summary>What the chosen target asks of the furnace iron; empty where it cannot be said.</summary>
    public static IReadOnlyList<TargetRow> Rows(ChargeView data, ChargeChoice choice)
    {
        ArgumentNullException.ThrowIfNull(data);
        ArgumentNullException.ThrowIfNull(choice);
        return data.Grades.SingleOrDefault(g => g.Id == choice.GradeId) is { } grade ? Rows(data, grade, choice, new FieldCheck()) : [];
    }

    private static IReadOnlyList<TargetRow> Rows(ChargeView data, GradeView grade, ChargeChoice choice, FieldCheck fields) => choice.Target is ChargeTarget.Poured
        ? PouredTarget.Rows(data, grade, choice, fields)
        : [.. ChargeLimits.Chosen(grade.At(WindowStage.Furnace), choice.Limits, fields).SelectMany(TargetRow.Of)];

    private static IEnumerable<VolumeLimit> Volumes(ChargeWishes wishes)
    {
        if (wishes.FurnaceM3 is { } furnace) yield return new(FurnaceRoom, furnace);
        if (wishes.BucketM3 is { } bucket) yield return new(BucketRoom, bucket * (wishes.BucketFillings ?? 1));
    }

    private static void CheckNames(ChargeView data, ChargeChoice choice, FieldCheck fields)
    {
        foreach (var (path, codes) in new[] { ("materials", (choice.Materials ?? []).Select(m => m.Code)), ("byHand", (choice.ByHand ?? []).Select(m => m.Code)) })
        {
            var seen = new HashSet<string>();
            foreach (var code in codes)
            {
                if (data.Materials.All(m => m.Code != code)) fields.Add($"{path}.{code}", "material.unknown", code);
                if (!seen.Add(code)) fields.Add($"{path}.{code}", "material.twice", code);
            }
        }

        foreach (var name in Twice((choice.Limits ?? []).Select(limit => limit.Quantity))) fields.Add($"limits.{name}", "quantity.twice", name);
        foreach (var name in Twice(choice.Groups.Select(group => group.Group))) fields.Add($"groups.{name}", "group.twice", name);
    }

    private static IEnumerable<string> Twice(IEnumerable<string> names) => names.GroupBy(name => name).Where(same => same.Count() > 1).Select(same => same.Key);

    /// <summary>While another heat is in the furnace nobody knows what it will leave: a person says so, and its analysis is not measured.</summary>
    private static Metal? Heel(ChargeFurnaceView furnace, ChargeChoice choice, FieldCheck fields)
    {
        var kg = choice.HeelKg ?? (furnace.HeatId is null ? Math.Max(0, furnace.LiquidKg) : null);
        if (kg is null) fields.Add("heelKg", "heel.unknown", furnace.HeatNumber ?? "");
        if (kg > furnace.CapacityKg) fields.Add("heelKg", "heel.overCapacity", kg, furnace.CapacityKg);
        else if (kg > choice.MeltKg) fields.Add("heelKg", "heel.overMelt", kg, choice.MeltKg);
        var analysis = furnace.HeatId is null ? furnace.Heel?.Analysis : null;
        return kg is { } known && known <= choice.MeltKg ? Metal.Of(known, analysis ?? Analysis.Empty) : null;
    }
}
