using MeltShop.Metallurgy.Elements;
using MeltShop.Records;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>
/// Holds castings again when their iron turns out to hold too little magnesium: those of the ladle whose sample says so, and those that
/// were poured from ladles, pouring furnaces and troughs that took its iron.
/// </summary>
internal static class LowIron
{
    /// <summary>Where a sample of treated iron lies under the floor of its ladle's card; answers what changed.</summary>
    public static async Task<IReadOnlyList<ChangeNotice>> HoldLow(this Writing writing, Sample sample, CancellationToken cancellation)
    {
        if (sample.TreatedLadleId is not { } id || !SampleKinds.Treated.Contains(sample.Kind)) return [];
        return await writing.HoldLow(id, sample.Means.Find(m => m.Element == Element.Mg)?.Percent, cancellation);
    }

    /// <inheritdoc cref="HoldLow(Writing, Sample, CancellationToken)"/>
    /// <param name="mgPercent">What the sample says, %; null where magnesium was not measured.</param>
    public static async Task<IReadOnlyList<ChangeNotice>> HoldLow(this Writing writing, long treatedLadleId, double? mgPercent, CancellationToken cancellation)
    {
        var floor = await writing.Db.InForce<PocketCard>().Where(c => c.TreatedLadleId == treatedLadleId).MaxAsync(c => c.MgFloorPercent, cancellation);
        if (!(mgPercent < floor)) return [];
        var own = await writing.Hold([treatedLadleId], await Name(writing, treatedLadleId, cancellation), cancellation);
        return [.. own, .. await writing.HoldFed(treatedLadleId, null, cancellation)];
    }

    /// <summary>Of many ladles those whose magnesium, %, lies under their floor, in one statement: a file may bring thousands, and few are low.</summary>
    public static async Task<IReadOnlyList<long>> Under(this RecordsContext db, IReadOnlyDictionary<long, double> mgPercents, CancellationToken cancellation)
    {
        if (mgPercents.Count == 0) return [];
        var ids = mgPercents.Keys.ToList();
        var floors = await db.InForce<PocketCard>().Where(c => EF.Parameter(ids).Contains(c.TreatedLadleId) && c.MgFloorPercent != null)
            .Select(c => new { c.TreatedLadleId, Floor = c.MgFloorPercent!.Value }).ToListAsync(cancellation);
        return [.. floors.Where(f => mgPercents[f.TreatedLadleId] < f.Floor).Select(f => f.TreatedLadleId).Distinct()];
    }

    /// <summary>Those that took iron of a ladle and have a source that came back low.</summary>
    /// <param name="reason">Null: the ladle that it came from.</param>
    public static async Task<IReadOnlyList<ChangeNotice>> HoldFed(this Writing writing, long treatedLadleId, string? reason, CancellationToken cancellation)
    {
        var doubtful = new List<long>();
        foreach (var id in await LowSources.Fed(writing.Db, treatedLadleId, cancellation))
        {
            if ((await LowSources.Of(writing.Db, id, cancellation)).Count > 0) doubtful.Add(id);
        }

        return doubtful.Count == 0 ? [] : await writing.Hold(doubtful, reason ?? await Name(writing, treatedLadleId, cancellation), cancellation);
    }

    /// <summary>As the recall list asks for it: heat and ordinal.</summary>
    private static async Task<string> Name(Writing writing, long treatedLadleId, CancellationToken cancellation)
    {
        var name = await (
            from ladle in writing.Db.TreatedLadles
            join heat in writing.Db.Heats on ladle.HeatId equals heat.Id
            where ladle.Id == treatedLadleId
            select new { heat.Number, ladle.Ordinal }).SingleAsync(cancellation);
        return FormattableString.Invariant($"{name.Number}/{name.Ordinal}");
    }
}
