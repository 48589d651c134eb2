using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Pouring;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>Iron of a ladle that is poured onto other iron: what magnesium the mixture has, as a number and as a band, and how long it lasts.</summary>
internal sealed record Mixing
{
    public double? MgPercent { get; private init; }
    public MagnesiumRange? Range { get; private init; }
    public double? MinutesToFloor { get; private init; }
    public double? LeastMinutesToFloor { get; private init; }

    /// <summary>Magnesium of what came, before it was poured over, %.</summary>
    public double? CameMgPercent { get; private init; }

    public DateTimeOffset? InoculatedAt { get; private init; }

    /// <summary>The last sample of what came.</summary>
    public long? SampleId { get; private init; }

    /// <summary>Answers what stands against it, too: not every iron goes into every ladle.</summary>
    public static async Task<(Mixing? Mixing, Finding? Finding)> Of(Writing writing, PouringLadle from, TreatedLadle? into, double kg, CancellationToken ct)
    {
        if (into is null || into.Id == from.Treated.Id) return (null, new Finding("intoLadleId", "ladle.unknown"));
        if (into.State is not (TreatedLadleState.Tapped or TreatedLadleState.Pouring)) return (null, new Finding("intoLadleId", "state.wrong", into.State.ToString()));
        var (target, finding) = await writing.Find(into.Id, "intoLadleId", ct);
        if (finding is not null) return (null, finding);
        if (target!.Card.MgFloorPercent is null && from.Card.MgFloorPercent is not null) return (null, new Finding("intoLadleId", "ladle.treatedIntoGrey"));
        var at = writing.Stamp.ObservedAt;
        var there = await LadleContents.One(writing.Db, into.Id, ct);
        var vessel = await writing.Db.Ladles.AsNoTracking().SingleAsync(l => l.Id == into.LadleId, ct);
        if (there.AtLeastKg + kg > vessel.CapacityKg) return (null, new Finding("kg", "ladle.overBrim", vessel.CapacityKg, Math.Max(0, there.LeftKg)));
        var times = await LadleTimesRows.Load(writing.Db, [from.Treated.Id, into.Id], at, ct);
        var mixing = new Mixing
        {
            InoculatedAt = times[from.Treated.Id].InoculatedAt ?? times[from.Treated.Id].TappedAt,
            SampleId = await writing.Db.InForce<Sample>().Where(s => s.TreatedLadleId == from.Treated.Id && s.ObservedAt <= at && s.Means.Count > 0)
                .OrderByDescending(s => s.ObservedAt).Select(s => (long?)s.Id).FirstOrDefaultAsync(ct),
        };
        if (target.Card.MgFloorPercent is not { } floor || MagnesiumNow.FadeOf(target.Card) is not { } fade) return (mixing, null);

        var comes = MagnesiumNow.Percent(times[from.Treated.Id], MagnesiumNow.FadeOf(from.Card), at);
        var mixed = PouringOver.MgPercent(Math.Max(0, there.LeftKg), MagnesiumNow.Percent(times[into.Id], fade, at), kg, comes, ReLadling.LossPercent.Most);
        var range = Banded(there, MagnesiumNow.Range(times[into.Id], target.Card, at), kg, MagnesiumNow.Range(times[from.Treated.Id], from.Card, at));
        return (mixing with
        {
            MgPercent = mixed,
            Range = range,
            MinutesToFloor = mixed > floor ? fade.MinutesTo(mixed, floor) : null,
            LeastMinutesToFloor = range?.LeastPercent > floor ? (MagnesiumNow.FastestFade(target.Card) ?? fade).MinutesTo(range.LeastPercent, floor) : null,
            CameMgPercent = comes,
        }, null);
    }

    // Into an empty one only what comes counts; where either band is not known, that of the mixture is not.
    private static MagnesiumRange? Banded(LadleContent there, MagnesiumRange? inside, double kg, MagnesiumRange? comes) =>
        comes is not null && (there.InKg > 0 ? inside : comes) is { } known
            ? PouringOver.Range((Math.Max(0, there.AtLeastKg), Math.Max(0, there.AtMostKg)), known, kg, comes) : null;
}
