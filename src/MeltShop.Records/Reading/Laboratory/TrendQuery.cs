using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Laboratory;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>
/// The statement behind a trend. The heats are looked up first, by the same walk of an index as the history's, and named by the page: joined in
/// one statement SQLite reads every mean there is (tried).
/// </summary>
internal static class TrendQuery
{
    /// <summary>A mean of a sample.</summary>
    internal sealed record Reading(long SampleId, long HeatId, DateTimeOffset At, SampleKind Kind, string? Coin, Element Element, double Percent, long InstrumentId, string? Remarks);

    /// <summary>What the samples of some heats read of the elements that enter, in any order.</summary>
    public static IQueryable<Reading> Of(RecordsContext db, TrendFilter filter, IReadOnlyList<long> heats)
    {
        var (one, other) = filter.Treated ? (SampleKinds.Treated[0], SampleKinds.Treated[1]) : (SampleKinds.OfTheBath[0], SampleKinds.OfTheBath[1]);

        // Magnesium tells whether a quantity of untreated iron may be said at all.
        List<Element> elements = [.. filter.Quantity.Elements.Concat(filter.Quantity.IsOfUntreatedIron ? [Element.Mg] : []).Distinct()];
        var rows =
            from sample in db.Samples
            join mean in db.SampleMeans on sample.Id equals mean.SampleId
            where heats.Contains(sample.HeatId) && EF.Constant(elements).Contains(mean.Element) && (sample.Kind == one || sample.Kind == other)
            select new { sample, mean };
        // A spark does not tell the carbon of a grey coin, and a treated one often is.
        if (elements.Contains(Element.C))
        {
            rows = rows.Where(r => (!r.sample.GreyFracture && !filter.Treated)
                || db.Instruments.Any(i => i.Id == r.sample.InstrumentId && i.Kind == InstrumentKind.Combustion));
        }

        return rows.Select(r => new Reading(
            r.sample.Id, r.sample.HeatId, r.sample.ObservedAt, r.sample.Kind, r.sample.CoinNumber, r.mean.Element, r.mean.Percent, r.sample.InstrumentId ?? TrendFilter.NoInstrument, r.sample.Remarks));
    }

    /// <summary>A point for each sample that measured what the quantity needs, and of which its formula speaks.</summary>
    public static IEnumerable<TrendPoint> Points(TrendFilter filter, IEnumerable<Reading> readings)
    {
        foreach (var sample in readings.GroupBy(r => r.SampleId))
        {
            var (means, of) = (Analysis.Of(sample.Select(r => KeyValuePair.Create(r.Element, r.Percent))), sample.First());
            if (filter.Quantity.Missing(means).Count > 0 || !filter.Quantity.IsMeantFor(means)) continue;
            yield return new(of.SampleId, of.HeatId, "", of.At, of.Kind, of.Coin, filter.Quantity.Value(means), of.InstrumentId, null)
            {
                Remarks = string.IsNullOrWhiteSpace(of.Remarks) ? null : of.Remarks, TakenAsZero = filter.Quantity.TakenAsZero(means),
            };
        }
    }
}
