using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;
using MeltShop.Web.Api.Reading;

namespace MeltShop.Web.Api.Parts;

/// <summary>Reads the materials of a charge or the additions of a correction.</summary>
internal static class MaterialReader
{
    /// <summary>More kinds than any yard has; each costs a solve of its own for the price at which it would enter.</summary>
    public const int Most = 500;

    /// <summary>All materials of the list; the list has to hold one.</summary>
    public static IReadOnlyList<ChargeMaterial> ReadAll(ObjectReader request, string name, bool withHeat)
    {
        var codes = new HashSet<string>(StringComparer.Ordinal);
        var materials = new List<ChargeMaterial>();
        foreach (var reader in request.NeededList(name, Most, "materials.none") ?? [])
        {
            var material = Read(reader, withHeat);
            if (material.Code.Length > 0 && !codes.Add(material.Code)) reader.Report("code", "code.duplicate", material.Code);
            materials.Add(material);
        }

        return materials;
    }

    private static ChargeMaterial Read(ObjectReader reader, bool withHeat)
    {
        var material = new ChargeMaterial
        {
            Code = reader.NeededText("code"),
            PricePerTonne = reader.Needed("pricePerTonne", NumberRule.Any),
            Composition = new MaterialComposition
            {
                Analysis = reader.NeededAnalysis("analysis"),
                MetallicYieldPercent = reader.Number("metallicYieldPercent", NumberRule.Yield) ?? 100,
                RecoveryPercent = reader.PerElement("recoveryPercent", NumberRule.Recovery),
            },
            SpreadPercent = reader.PerElement("spread", NumberRule.Spread),
            AvailableKg = reader.Number("availableKg", NumberRule.Mass),
            MinKg = reader.Number("minKg", NumberRule.Mass) ?? 0,
            MaxKg = reader.Number("maxKg", NumberRule.Mass),
            MinPercent = reader.Number("minPercent", NumberRule.Percent) ?? 0,
            MaxPercent = reader.Number("maxPercent", NumberRule.Percent) ?? 100,
            PieceKg = reader.Number("pieceKg", NumberRule.SomeMass),
            HeatKWhPerTonne = withHeat ? reader.Number("heatKWhPerTonne", NumberRule.Any) : null,
        };
        if (material.MinKg > material.MaxKg) reader.Report("minKg", "mass.minOverMax", material.MinKg, material.MaxKg);
        if (material.MinPercent > material.MaxPercent)
            reader.Report("minPercent", "percent.minOverMax", material.MinPercent, material.MaxPercent);
        reader.RefuseTheRest();
        return material;
    }
}
