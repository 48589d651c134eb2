using MeltShop.Operations.Importing.Maps;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Laboratory;

namespace MeltShop.Operations.Importing.Rows;

/// <summary>Brings the burns of a sample together. A sample counts with all its rows or with none: a mean over two of three burns is another mean.</summary>
internal static class SampleGrouping
{
    /// <param name="rows">Sound rows in the order of the file.</param>
    /// <param name="faulty">The samples, by their keys, of which a row is faulty.</param>
    public static List<ImportSample> Group(ColumnMap map, IEnumerable<ImportRow> rows, HashSet<object> faulty, List<RowFault> faults)
    {
        var samples = new List<ImportSample>();
        foreach (var group in rows.GroupBy(Key))
        {
            var burns = group.ToList();
            if ((faulty.Contains(group.Key) ? "importSample.faultyRow" : Fault(map, burns)) is { } code)
                faults.AddRange(burns.Select(r => new RowFault(r.Line, "", r.Text, code, ReadingInputs.MostBurns)));
            else samples.Add(new(burns[0].Subject, burns.Min(r => r.TakenAt), map.Layout == RowLayout.MeanPerRow && !IsOfFigures(burns[0]), InOrder(burns)));
        }

        return samples;
    }

    /// <summary>The sender's number; without one, all that the file says of the coin.</summary>
    public static object Key(ImportRow row) => row.Subject.Number is { } number ? number : (row.Subject, row.TakenAt);

    private static string? Fault(ColumnMap map, List<ImportRow> burns) =>
        burns.Count == 1 ? null
        : map.Layout == RowLayout.MeanPerRow || IsOfFigures(burns[0]) ? "importSample.twice"
        : burns.Count > ReadingInputs.MostBurns ? "sample.tooManyBurns"
        : burns.Exists(b => b.Subject != burns[0].Subject) ? "importSample.differs"
        : burns[0].Burn is not null && burns.DistinctBy(b => b.Burn).Count() < burns.Count ? "importBurn.twice"
        : null;

    private static bool IsOfFigures(ImportRow row) => SampleKinds.OfFigures.Contains(row.Subject.Kind);

    private static List<ImportRow> InOrder(List<ImportRow> burns) => burns[0].Burn is null ? burns : [.. burns.OrderBy(b => b.Burn)];
}
