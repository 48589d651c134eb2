using MeltShop.Metallurgy;
using MeltShop.Operations.Ladles;
using MeltShop.Records;
using MeltShop.Records.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Api.Weighings;

/// <summary>Where the taps of scales arrive: finds the prepared ladle that the sender names, and hands its mass to the operation that people use.</summary>
internal sealed class TapDesk(IDbContextFactory<RecordsContext> contexts, RecordTap recordTap, TimeProvider clock)
{
    /// <param name="station">Name of the sender's key.</param>
    public async Task<(Tap? Tap, IReadOnlyList<Finding> Findings)> Take(string station, TapRequest request, CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        var findings = new List<Finding>();
        var heatId = await db.Heats.Where(h => h.Number == request.Heat).Select(h => (long?)h.Id).SingleOrDefaultAsync(cancellation);
        var ladleId = await db.Ladles.Where(l => l.Code == request.Ladle).Select(l => (long?)l.Id).SingleOrDefaultAsync(cancellation);
        var by = await ScaleSender.Person(db, station, request.By, cancellation);
        if (heatId is null) findings.Add(new("heat", "heat.unknown", request.Heat));
        if (ladleId is null) findings.Add(new("ladle", "ladle.unknown", request.Ladle));
        if (by is null) findings.Add(new("by", "person.unknown", request.By));
        if (findings.Count > 0) return (null, findings);
        var treated = await db.TreatedLadles.AsNoTracking().Where(l => l.HeatId == heatId && l.LadleId == ladleId).OrderBy(l => l.Ordinal).LastOrDefaultAsync(cancellation);
        if (treated is null) return (null, [new("ladle", "ladle.notPrepared", request.Ladle)]);

        var key = ScaleSender.KeyOf("tap", station, request.Id);
        var outcome = await recordTap.Run(
            by!,
            new(key, request.ObservedAt ?? clock.GetUtcNow(), treated.Id, treated.Version, request.Load.NetKg, request.TemperatureC)
            {
                GrossKg = request.Load.GrossKg, TareKg = request.Load.TareKg,
            },
            cancellation);
        if (!outcome.Succeeded) return (null, [.. outcome.Findings.Select(Placed)]);
        var tap = await db.Taps.AsNoTracking().SingleAsync(t => t.Id == outcome.Value.TapId, cancellation);
        var isTheSame = tap.HeatId == heatId && Math.Abs(tap.Kg - request.Load.NetKg) < 1e-6
            && await db.TreatedLadles.AnyAsync(l => l.Id == tap.TreatedLadleId && l.LadleId == ladleId, cancellation);
        return isTheSame ? (tap, []) : (null, [new("id", "scale.idTaken", request.Id)]);
    }

    /// <summary>The operation's fields and words are for people at the ladle; the sender's have other names.</summary>
    private static Finding Placed(Finding finding) => finding with
    {
        Path = finding.Path switch { "treatedLadleId" or "version" => "ladle", "kg" => "grossKg", "" => "by", _ => finding.Path },
        Code = finding.Code switch { "state.wrong" => "ladle.notPrepared", "right.missing" => "tap.right", _ => finding.Code },
    };
}
