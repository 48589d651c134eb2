using System.Text.Json;
using MeltShop.Operations.Yard;
using MeltShop.Records.People;
using MeltShop.Records.Yard;

namespace MeltShop.Web.Demo;

/// <summary>Fills the yard of the demo: materials with analysis, price and a counted stock.</summary>
internal static class DemoYard
{
    /// <returns>The ids by code.</returns>
    public static async Task<Dictionary<string, long>> Fill(DemoHands hands, DemoCatalogue catalogue, CancellationToken cancellation)
    {
        var ids = new Dictionary<string, long>();
        foreach (var material in catalogue.Materials)
        {
            cancellation.ThrowIfCancellationRequested();
            var id = await hands.Do(hands.The<AddMaterial>(), Role.Metallurgist, Command(hands, material));
            await Count(hands, id, material);
            ids[material.Code] = id;
        }

        return ids;
    }

    private static async Task Count(DemoHands hands, long id, DemoMaterial material)
    {
        IReadOnlyList<string?> lots = material.Demo.Lots ?? (IReadOnlyList<string?>)[null];
        foreach (var (place, lot) in lots.Index())
        {
            await hands.Do(hands.The<BookStock>(), Role.Melter, new(
                DemoKey.Of($"stock/{material.Code}/{lot}"), hands.Now, id, StockKind.Counted, material.Demo.StockKg / lots.Count) { Lot = lot, Bin = material.Demo.Bins?[place] });
        }
    }

    /// <summary>A choice as the records write it: <c>tundishCover</c>.</summary>
    public static string Word<TEnum>(TEnum value)
        where TEnum : struct, Enum => JsonNamingPolicy.CamelCase.ConvertName(value.ToString());

    private static AddMaterial.Command Command(DemoHands hands, DemoMaterial material) => new(
        DemoKey.Of($"material/{material.Code}"),
        hands.Now,
        material.Code,
        material.Name,
        material.Kind,
        material.Uses.Aggregate(MaterialUses.None, (all, use) => all | use),
        material.Demo.PricePerTonne,
        material.MetallicYieldPercent,
        Percents(material),
        string.Join(". ", new[] { material.Source.Text, material.TypicalNote, material.BathRecoveryNote }.OfType<string>()),
        Word(material.Source.Kind),
        BulkDensityTonnesPerM3: material.Demo.BulkDensityTonnesPerM3,
        MaxSharePercent: material.MaxSharePercent,
        Cautions: string.Join(' ', material.Cautions.Select(Word)),
        IsDemo: true);

    // An element may scatter that has no percent of its own: a trace of nought that is sometimes there.
    private static List<MaterialPercentInput> Percents(DemoMaterial material) =>
    [
        .. material.Analysis.Elements.Union(material.Spread.Keys).Order().Select(element => new MaterialPercentInput(
            element.Symbol,
            material.Analysis.OrZero(element),
            material.Spread.TryGetValue(element, out var spread) ? spread : null,
            material.RecoveryPercent.TryGetValue(element, out var recovery) ? recovery : null,
            material.BathRecoveryPercent.TryGetValue(element, out var late) ? late : null)),
    ];
}
