using MeltShop.Charging.Problems;
using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Yard;

namespace MeltShop.Operations.Charging;

/// <summary>The question "which charge?", the same for the page that plans live and the operation that keeps the plan.</summary>
public static class ChargeQuestion
{
    /// <returns>The problem, or findings at the fields of the choice: <c>materials.CODE.maxKg</c>, <c>limits.Si.least</c>, <c>meltKg</c>, …</returns>
    public static (ChargeProblem? Problem, IReadOnlyList<Finding> Findings) Build(ChargeView data, ChargeChoice choice)
    {
        var fields = new FieldCheck();
        fields.Check(choice);
        var furnace = data.Furnaces.SingleOrDefault(f => f.Id == choice.FurnaceId);
        var grade = data.Grades.SingleOrDefault(g => g.Id == choice.GradeId);
        if (furnace is null) fields.Add("furnaceId", "furnace.unknown");
        if (grade is null) fields.Add("gradeId", "grade.unknown");
        CheckNames(data, choice, fields);
        if (furnace is null || grade is null || fields.Findings.Count > 0) return (null, fields.Findings);

        foreach (var material in data.Materials.Where(m => m.Analysis is null && IsAskedFor(Override(choice, m))))
        {
            fields.Add($"materials.{material.Code}", "material.noAnalysis", material.Code);
        }

        var heel = Heel(furnace, choice, fields);
        var materials = data.Materials.Select(m => Material(m, Override(choice, m))).OfType<ChargeMaterial>().ToList();
        var limits = ChargeLimits.Of(grade.At(WindowStage.Furnace), choice.Limits ?? [], fields);
        if (choice.MeltKg > furnace.CapacityKg) fields.Add("meltKg", "furnace.capacity", furnace.CapacityKg);
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
        }, []);
    }

    internal static void Check(this FieldCheck fields, ChargeChoice choice)
    {
        fields.Mass("meltKg", choice.MeltKg);
        fields.MassOrZero("meltToleranceKg", choice.MeltToleranceKg);
        if (choice.HeelKg is { } heel) fields.MassOrZero("heelKg", heel);
        if (fields.Number("confidencePercent", choice.ConfidencePercent) && choice.ConfidencePercent is < 50 or >= 100)
        {
            fields.Add("confidencePercent", "confidence.outOfRange", choice.ConfidencePercent);
        }

        foreach (var material in choice.Materials ?? [])
        {
            var path = $"materials.{material.Code}";
            if (material.MinKg is { } min) fields.MassOrZero($"{path}.minKg", min);
            if (material.MaxKg is { } max) fields.MassOrZero($"{path}.maxKg", max);
            if (material.MinKg > material.MaxKg) fields.Add($"{path}.minKg", "bounds.crossed", material.MinKg, material.MaxKg!);
            fields.Percent($"{path}.maxPercent", material.MaxPercent);
        }
    }

    private static void CheckNames(ChargeView data, ChargeChoice choice, FieldCheck fields)
    {
        var seen = new HashSet<string>();
        foreach (var code in (choice.Materials ?? []).Select(m => m.Code))
        {
            if (data.Materials.All(m => m.Code != code)) fields.Add($"materials.{code}", "material.unknown", code);
            if (!seen.Add(code)) fields.Add($"materials.{code}", "material.twice", code);
        }
    }

    /// <summary>While another heat is in the furnace nobody knows what it will leave: a person says so, and its analysis is not measured.</summary>
    private static Metal? Heel(ChargeFurnaceView furnace, ChargeChoice choice, FieldCheck fields)
    {
        var kg = choice.HeelKg ?? (furnace.HeatId is null ? Math.Max(0, furnace.LiquidKg) : null);
        if (kg is null) fields.Add("heelKg", "heel.unknown", furnace.HeatNumber ?? "");
        if (kg > choice.MeltKg) fields.Add("heelKg", "heel.overMelt", kg, choice.MeltKg);
        var analysis = furnace.HeatId is null ? furnace.Heel?.Analysis : null;
        return kg is { } known && known <= choice.MeltKg ? Metal.Of(known, analysis ?? Analysis.Empty) : null;
    }

    private static MaterialChoice Override(ChargeChoice choice, MaterialView material) =>
        choice.Materials?.SingleOrDefault(m => m.Code == material.Code) ?? new MaterialChoice(material.Code);

    private static bool IsAskedFor(MaterialChoice choice) => choice.Include == true || choice.MinKg > 0;

    // Not measured is not zero: what has no analysis cannot be planned, or it would count as pure iron.
    private static ChargeMaterial? Material(MaterialView material, MaterialChoice choice) => material.Analysis is null ? null : Taken(material, choice);

    /// <summary>A material as the optimiser takes it; null where it is left out.</summary>
    internal static ChargeMaterial? Taken(MaterialView material, MaterialChoice choice)
    {
        // A stock that was never counted limits nothing. An empty one leaves the material out, unless somebody asks for it by name.
        var inStock = material.StockKg is null or > 0;
        if (!(choice.Include ?? inStock)) return null;
        return new ChargeMaterial
        {
            Code = material.Code,
            PricePerTonne = (double)(choice.PricePerTonne ?? material.PricePerTonne),
            Composition = material.Composition(),
            SpreadPercent = material.Spreads(),
            AvailableKg = inStock ? material.StockKg : null,
            MinKg = choice.MinKg ?? 0,
            MaxKg = choice.MaxKg,
            MaxPercent = choice.MaxPercent ?? material.MaxSharePercent ?? 100,
            PieceKg = material.PieceKg,
        };
    }
}
