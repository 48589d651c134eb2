using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Laboratory;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>
/// The statement behind a trend. The heats are looked up first, by the same walk of an index as the history's, and named here: joined in
/// one statement SQLite reads every mean there is (tried).
/// </summary>
internal static class TrendQuery
{
    /// <summary>The samples of some heats, in any order.</summary>
    public static IQueryable<TrendPoint> Of(RecordsContext db, TrendFilter filter, IReadOnlyList<long> heats)
    {
        var (one, other) = filter.Treated ? (SampleKinds.Treated[0], SampleKinds.Treated[1]) : (SampleKinds.OfTheBath[0], SampleKinds.OfTheBath[1]);
        var rows =
            from sample in db.Samples
            join mean in db.SampleMeans on sample.Id equals mean.SampleId
            where heats.Contains(sample.HeatId) && mean.Element == filter.Element && (sample.Kind == one || sample.Kind == other)
            select new { sample, mean };
        // A spark does not tell the carbon of a grey coin, and a treated one often is.
        if (filter.Element == Element.C)
        {
            rows = rows.Where(r => (!r.sample.GreyFracture && !filter.Treated)
                || db.Instruments.Any(i => i.Id == r.sample.InstrumentId && i.Kind == InstrumentKind.Combustion));
        }

        return rows.Select(r => new TrendPoint(
            r.sample.Id, r.sample.HeatId, "", r.sample.ObservedAt, r.sample.Kind, r.sample.CoinNumber, r.mean.Percent, r.sample.InstrumentId ?? TrendFilter.NoInstrument, null));
    }
}
