using System.Collections.Frozen;
using System.Globalization;
using static MeltShop.Records.Writing.ChangeKind;

namespace MeltShop.Records.Writing;

/// <summary>
/// Says of which kind a row of each table is, so that whatever an operation writes is announced without its naming it: a booking that
/// comes along with a tap is heard in the yard.
/// </summary>
public static class ChangedThings
{
    /// <summary>The column that names whose row it is; empty for a part that is written with its whole and never alone.</summary>
    private static readonly FrozenDictionary<string, (string Kind, string Whose)> Tables = new Dictionary<string, (string, string)>
    {
        ["Sites"] = (Site, "Id"), ["ChargeRules"] = (Site, "Id"),
        ["Furnaces"] = (Furnace, "Id"), ["FurnaceMetals"] = (Furnace, "FurnaceId"), ["FurnaceMetalPercents"] = (Furnace, ""),
        ["Heels"] = (Furnace, "FurnaceId"), ["HeelPercents"] = (Furnace, ""),
        ["Ladles"] = (Ladle, "Id"), ["LadleFigures"] = (Ladle, "LadleId"),
        ["Materials"] = (Material, "Id"), ["MaterialAnalyses"] = (Material, "MaterialId"), ["MaterialPercents"] = (Material, ""),
        ["Prices"] = (Material, "MaterialId"), ["StockFacts"] = (Material, "MaterialId"), ["LotPlaces"] = (Material, "MaterialId"),
        ["Grades"] = (Grade, "Id"), ["GradeWindows"] = (Grade, "GradeId"),
        ["CastingOrders"] = (Order, "Id"),
        ["Plans"] = (Plan, "Id"),
        ["Heats"] = (Heat, "Id"), ["HeatSteps"] = (Heat, "HeatId"), ["HeatCorrections"] = (Heat, "HeatId"), ["BathCorrections"] = (Heat, "HeatId"),
        ["Weighings"] = (Heat, "HeatId"), ["Temperatures"] = (Heat, "HeatId"),
        ["Samples"] = (Sample, "Id"), ["Burns"] = (Sample, "SampleId"), ["Readings"] = (Sample, ""), ["SampleMeans"] = (Sample, "SampleId"),
        ["SampleFigures"] = (Sample, "SampleId"), ["BurnDecisions"] = (Sample, "SampleId"), ["CoinsOnTheirWay"] = (Sample, "Id"),
        ["Instruments"] = (Instrument, "Id"), ["InstrumentElements"] = (Instrument, "InstrumentId"), ["ControlSamples"] = (Instrument, "InstrumentId"),
        ["ControlReadings"] = (Instrument, ""), ["ReferenceMaterials"] = (Instrument, "Id"), ["CertifiedValues"] = (Instrument, "ReferenceMaterialId"),
        ["TreatedLadles"] = (TreatedLadle, "Id"), ["LadleSteps"] = (TreatedLadle, "TreatedLadleId"), ["PocketCards"] = (TreatedLadle, "TreatedLadleId"),
        ["Taps"] = (TreatedLadle, "TreatedLadleId"), ["PouredMoulds"] = (TreatedLadle, "TreatedLadleId"), ["LadleRests"] = (TreatedLadle, "TreatedLadleId"),
        ["LadleInoculations"] = (TreatedLadle, "TreatedLadleId"), ["MagnesiumDoses"] = (TreatedLadle, "TreatedLadleId"),
        ["CastingDecisions"] = (TreatedLadle, "TreatedLadleId"), ["TestPieces"] = (TreatedLadle, "TreatedLadleId"), ["TestResults"] = (TreatedLadle, ""),
        ["Certificates"] = (TreatedLadle, "TreatedLadleId"),
        ["ImportMaps"] = (Import, "Id"), ["ImportedFiles"] = (Import, "Id"), ["ImportedSamples"] = (Import, "ImportedFileId"), ["ImportedChecks"] = (Import, "ImportedFileId"),
        ["ApiKeys"] = (ApiKey, "Id"),
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The kind of a table's rows, one of <see cref="ChangeKind"/>; null where nobody is told of them by their rows: drafts, people, the trail.</summary>
    public static string? KindOf(string table) => Tables.TryGetValue(table, out var of) ? of.Kind : null;

    /// <summary>What the write said itself, and what its rows say beyond it.</summary>
    internal static IReadOnlyList<ChangeNotice> Of(IReadOnlyList<ChangeNotice> said, IReadOnlyList<RowImage> rows)
    {
        var known = said.Select(notice => (notice.Kind, notice.Id)).ToHashSet();
        return [.. said, .. rows.Select(Of).OfType<ChangeNotice>().Where(notice => known.Add((notice.Kind, notice.Id)))];
    }

    /// <summary>The column of a table that names whose row it is.</summary>
    internal static string? WhoseColumn(string table) => Tables.TryGetValue(table, out var of) ? of.Whose : null;

    private static ChangeNotice? Of(RowImage row)
    {
        if (!Tables.TryGetValue(row.Table, out var of) || of.Whose.Length == 0) return null;
        var whose = of.Whose == "Id" ? row.Key : (row.Columns ?? row.Was)?.GetValueOrDefault(of.Whose);
        return long.TryParse(whose, CultureInfo.InvariantCulture, out var id) ? new(of.Kind, id) : null;
    }
}
