using MeltShop.Metallurgy;
using MeltShop.Operations.Heats;
using MeltShop.Records;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>A ladle with iron in it, as an entry at it needs it.</summary>
internal sealed record PouringLadle(TreatedLadle Treated, Tap Tap, PocketCard Card);

/// <summary>What every entry at a ladle with iron in it asks first.</summary>
internal static class PouringCheck
{
    private static readonly IReadOnlyList<TreatedLadleState> WithIron =
        [TreatedLadleState.Tapped, TreatedLadleState.Pouring, TreatedLadleState.Held, TreatedLadleState.Released];

    /// <summary>The ladle, or what stands against it. What was decided about castings does not keep a late entry out.</summary>
    public static async Task<(PouringLadle? Ladle, Finding? Finding)> Find(this Writing writing, long id, string path, CancellationToken ct)
    {
        var treated = await writing.Db.TreatedLadles.FindAsync([id], ct);
        if (treated is null) return (null, new Finding(path, "ladle.unknown"));
        if (!WithIron.Contains(treated.State)) return (null, new Finding(path, "state.wrong", treated.State.ToString()));
        var tap = await writing.Db.InForce<Tap>().AsNoTracking().SingleAsync(t => t.TreatedLadleId == id, ct);
        var card = await writing.Db.InForce<PocketCard>().AsNoTracking().Where(c => c.TreatedLadleId == id).OrderBy(c => c.Id).LastAsync(ct);
        return writing.Stamp.ObservedAt < (tap.StartedAt ?? tap.ObservedAt)
            ? (null, new Finding("observedAt", "time.beforeTap", tap.ObservedAt))
            : (new(treated, tap, card), null);
    }

    /// <summary>Keeps the ledgers of the furnaces that ladles were tapped from, and with them the ladles' own, to this transaction.</summary>
    public static Task LockLadles(this RecordsContext db, CancellationToken ct, params IEnumerable<TreatedLadle> ladles) => db.LockHeats(ct, ladles.Select(l => l.HeatId));
}
