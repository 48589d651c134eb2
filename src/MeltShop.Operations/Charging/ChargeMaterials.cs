using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;

namespace MeltShop.Operations.Charging;

/// <summary>The materials of the yard as a charge is planned from them.</summary>
public static class ChargeMaterials
{
    /// <summary>
    /// Why a material cannot be planned, as the code of a finding; null where it can. Not measured is not zero: without an analysis it would
    /// count as pure iron, without a yield nobody can say how much metal it makes, and magnesium without a recovery would count as if all
    /// of it stayed.
    /// </summary>
    /// <param name="material">The material.</param>
    /// <param name="stage">When it is to come into the melt.</param>
    public static string? Gap(MaterialView material, RecoveryStage stage = RecoveryStage.Charge)
    {
        ArgumentNullException.ThrowIfNull(material);
        if (material.Analysis is not { } analysis) return "material.noAnalysis";
        if (material.MetallicYieldPercent is null) return "material.noYield";
        return analysis.Percents.Any(p => p.Element == Element.Mg && p.Percent > PocketQuestion.MgOfBaseIron && p.RecoveryAt(stage) is null)
            ? "material.noMgRecovery" : null;
    }

    /// <summary>A material that the yard has none of, as one could buy it; null where it cannot be planned.</summary>
    public static ChargeMaterial? Offered(MaterialView material) => Gap(material) is null ? Taken(material, new MaterialChoice(material.Code, Include: true)) : null;

    internal static List<ChargeMaterial> Of(IReadOnlyList<MaterialView> yard, ChargeChoice choice, FieldCheck fields)
    {
        var byHand = (choice.ByHand ?? []).Where(mass => mass.Kg > 0).Select(mass => mass.Code).ToHashSet();
        var materials = new List<ChargeMaterial>();
        foreach (var lying in yard)
        {
            var material = lying.Without(choice.LeftOutBins);
            var wanted = choice.Materials?.SingleOrDefault(m => m.Code == material.Code) ?? new MaterialChoice(material.Code);
            var isByHand = byHand.Contains(material.Code);
            if (Gap(material) is { } gap)
            {
                if (wanted.Include == true || wanted.MinKg > 0 || wanted.MinPercent > 0) fields.Add($"materials.{material.Code}", gap, material.Name);
                if (isByHand) fields.Add($"byHand.{material.Code}", gap, material.Name);
            }
            else if (Taken(material, wanted, isByHand) is { } taken)
            {
                if (taken.MinPercent > taken.MaxPercent) fields.Add($"materials.{material.Code}.minPercent", "bounds.crossed", taken.MinPercent, taken.MaxPercent);
                if (taken.MinKg > taken.AvailableKg) fields.Add($"materials.{material.Code}.minKg", "stock.under", taken.AvailableKg);
                materials.Add(choice.Wishes.Priced(taken, material));
            }
            else if (wanted.MinKg > 0 || wanted.MinPercent > 0)
            {
                // What is asked for is not dropped without a word because there is nothing to take it from.
                var path = $"materials.{material.Code}.{(wanted.MinKg > 0 ? "minKg" : "minPercent")}";
                if (wanted.Include == false) fields.Add(path, "material.leftOut", material.Name);
                else if (lying.StockKg is null or > 0) fields.Add(path, "bin.leftOut", material.Name, string.Join(", ", lying.Bins()));
                else fields.Add(path, "stock.under", 0.0);
            }
        }

        CheckShares(materials, choice, fields);
        return materials;
    }

    /// <summary>A material as the optimiser takes it; null where it is left out.</summary>
    /// <param name="isByHand">A person has put it into the charge: whatever the yard says, it is checked.</param>
    internal static ChargeMaterial? Taken(MaterialView material, MaterialChoice choice, bool isByHand = false)
    {
        // A stock that was never counted limits nothing. An empty one leaves the material out, unless somebody asks for it by name.
        var inStock = material.StockKg is null or > 0;
        if (!isByHand && !(choice.Include ?? inStock)) return null;
        return new ChargeMaterial
        {
            Code = material.Code,
            PricePerTonne = (double)(choice.PricePerTonne ?? material.PricePerTonne),
            Composition = material.Composition(RecoveryStage.Charge),
            SpreadPercent = material.Spreads(),
            AvailableKg = inStock || choice.Include != true ? material.StockKg : null,
            MinKg = choice.MinKg ?? 0,
            MaxKg = choice.MaxKg,
            MinPercent = choice.MinPercent ?? 0,
            MaxPercent = choice.MaxPercent ?? material.MaxSharePercent ?? 100,
            PieceKg = material.PieceKg,
            BulkDensityTonnesPerM3 = material.BulkDensityTonnesPerM3,
        };
    }

    /// <summary>Slag is what the yield leaves over: dirt, rust and sand (common practice, no source).</summary>
    private static ChargeMaterial Priced(this ChargeWishes wishes, ChargeMaterial taken, MaterialView material) => taken with
    {
        SlagPercent = 100 - taken.Composition.MetallicYieldPercent,
        MeltingKWhPerTonne = wishes.MeltingKWhPerTonne ?? 0,
        UseUpBonusPerTonne = material.Kind is MaterialKind.Returns ? wishes.UseUpBonusPerTonne ?? 0 : 0,
    };

    /// <summary>Greatest shares that do not reach the whole, and least ones that are more than it, leave no charge: told where somebody typed one.</summary>
    private static void CheckShares(List<ChargeMaterial> materials, ChargeChoice choice, FieldCheck fields)
    {
        if (materials.Sum(material => material.MinPercent) is > 100 and var least) fields.Add($"materials.{materials.Last(material => material.MinPercent > 0).Code}.minPercent", "shares.over100", least);
        if (materials.Count == 0 || materials.Sum(material => material.MaxPercent) is not (< 100 and var sum)) return;
        var typed = (choice.Materials ?? []).Where(m => m.MaxPercent is not null && materials.Any(material => material.Code == m.Code)).ToList();
        foreach (var path in typed.Count > 0 ? typed.Select(m => $"materials.{m.Code}.maxPercent") : ["materials"]) fields.Add(path, "shares.under100", sum);
    }
}
