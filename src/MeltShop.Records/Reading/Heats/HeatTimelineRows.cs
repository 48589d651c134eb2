using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;

namespace MeltShop.Records.Reading.Heats;

/// <summary>Everything about a heat in the order in which it happened; a correction stands where the fact that it corrects stood.</summary>
internal static class HeatTimelineRows
{
    public static IReadOnlyList<TimelineRow> Of(HeatView heat) =>
    [
        .. heat.Weighings.Select(w => new TimelineRow(TimelineKind.Weighing, w.Origin))
            .Concat(heat.Temperatures.Select(t => new TimelineRow(TimelineKind.Temperature, t.Origin)))
            .Concat(heat.Samples.Select(s => new TimelineRow(TimelineKind.Sample, s.Origin)))
            .Concat(heat.Ladles.SelectMany(l => l.Cards).Select(c => new TimelineRow(TimelineKind.PocketCard, c.Origin)))
            .Concat(heat.Ladles.SelectMany(l => l.Taps).Select(t => new TimelineRow(TimelineKind.Tap, t.Origin)))
            .Concat(heat.Ladles.SelectMany(l => l.Decisions).Select(d => new TimelineRow(TimelineKind.CastingDecision, d.Origin)))
            .Concat(heat.Metal.Where(IsOfItsOwn).Select(m => new TimelineRow(TimelineKind.Metal, m.Origin)))
            .Concat(heat.BurnDecisions.Select(b => new TimelineRow(TimelineKind.BurnDecision, b.Origin)))
            .Concat(heat.Steps.Where(s => s.State is HeatState.Closed or HeatState.Cancelled || s == heat.Steps[0]).Select(s => new TimelineRow(TimelineKind.HeatStep, s.Origin)))
            .Concat(heat.OfItself.Select(c => new TimelineRow(TimelineKind.HeatCorrection, c.Origin)))
            .Concat(heat.LadleSteps.Where(s => s.State is TreatedLadleState.Abandoned || IsEndOfReaction(heat, s)).Select(s => new TimelineRow(TimelineKind.LadleStep, s.Origin)))
            .OrderBy(r => r.Origin.ObservedAt).ThenBy(r => r.Origin.EnteredAt).Take(Facts.Most),
    ];

    // What was charged or tapped stands in the timeline by its weighing or tap.
    private static bool IsOfItsOwn(MetalView metal) => metal.Kind is not (FurnaceMetalKind.Charged or FurnaceMetalKind.Tapped);

    // Grey iron pours at once: its tap says so.
    private static bool IsEndOfReaction(HeatView heat, LadleStepView step) =>
        step.State is TreatedLadleState.Pouring && heat.Ladles.Any(l => l.Id == step.TreatedLadleId && l.ReactionEndedAt is not null);
}
