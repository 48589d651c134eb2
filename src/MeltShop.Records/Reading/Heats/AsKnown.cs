using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Statistics;
using MeltShop.Records.Reading.Laboratory;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Heats;

/// <summary>Takes back what the current states of a heat, its ladles and its burns learnt after the time that a view shows.</summary>
internal static class AsKnown
{
    /// <summary>The grade, the furnace, the start, the end and the heel that the heat was said to have at some time: those that the first later correction replaced.</summary>
    public static async Task<HeatHeadView> Of(RecordsContext db, HeatHeadView head, DateTimeOffset known, CancellationToken ct)
    {
        var later = await db.HeatCorrections.AsNoTracking().Where(c => c.HeatId == head.Id && c.EnteredAt > known).OrderBy(c => c.Id).ToListAsync(ct);
        if (later is not [var first, ..]) return head;
        var furnaceId = later.Select(c => c.FormerFurnaceId).FirstOrDefault(id => id is not null) ?? head.FurnaceId;
        if (furnaceId != head.FurnaceId)
        {
            var furnace = await db.Furnaces.AsNoTracking().SingleAsync(f => f.Id == furnaceId, ct);
            head = head with
            {
                FurnaceId = furnace.Id, FurnaceCode = furnace.Code, FurnaceName = furnace.Name, CapacityKg = furnace.CapacityKg, HighestC = furnace.HighestC,
            };
        }

        return head with
        {
            ClosedAt = later.Select(c => c.FormerClosedAt).FirstOrDefault(at => at is not null) ?? head.ClosedAt, GradeId = first.FormerGradeId, StartedAt = first.FormerStartedAt,
            HeelKg = later.Select(c => c.FormerHeelKg).FirstOrDefault(kg => kg is not null) ?? head.HeelKg,
        };
    }

    public static HeatView Of(HeatView view) => view with
    {
        Heat = view.Heat with
        {
            State = view.Steps.Count > 0 ? view.Steps[^1].State : view.Heat.State,
            ClosedAt = view.Heat.ClosedAt is { } closed && view.Steps.Any(s => s.Origin.ObservedAt == closed) ? closed : null,
            LiquidKg = view.Heat.HeelKg + view.Metal.Where(m => !m.Origin.IsCorrected).Sum(m => m.Kg),
        },
        Samples = [.. view.Samples.Select(s => Of(s, view))],
        Ladles =
        [
            .. view.Ladles.Where(l => l.Cards.Count > 0).Select(l => l with
            {
                State = view.LadleSteps.LastOrDefault(s => s.TreatedLadleId == l.Id)?.State ?? Ladles.TreatedLadleView.First,
                ReactionEndedAt = view.LadleSteps.Any(s => s.TreatedLadleId == l.Id && s.Origin.ObservedAt == l.ReactionEndedAt) ? l.ReactionEndedAt : null,
            }),
        ],
    };

    private static SampleView Of(SampleView sample, HeatView view)
    {
        var burns = sample.Burns.Select(burn =>
        {
            var last = view.BurnDecisions.LastOrDefault(d => d.SampleId == sample.Id && d.Ordinal == burn.Ordinal);
            var inherited = last is null && sample.Origin.CorrectsId is not null && burn.SetAside;
            return inherited ? burn : burn with { SetAside = last?.SetAside ?? false, SetAsideReason = last is { SetAside: true } ? last.Origin.Reason : null };
        }).ToList();
        var counting = burns.Where(b => !b.SetAside)
            .Select(b => Analysis.Of(b.Readings.Select(r => KeyValuePair.Create(r.Element, r.Percent)))).ToList();
        return sample with { Burns = burns, Means = [.. ReplicateBurns.Evaluate(counting).Select(e => new MeanView(e.Element, e.Mean, e.Count))] };
    }
}
