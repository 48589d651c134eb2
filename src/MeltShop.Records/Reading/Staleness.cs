using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading;

/// <summary>
/// Finds what a plan, a correction of the bath, a pocket card or a decision used and was corrected after it was made. Nothing is stored and nothing changes: the
/// corrections themselves say it.
/// </summary>
internal static class Staleness
{
    /// <summary>Marks the plan, the corrections, the cards and the decisions of a heat: five statements at most.</summary>
    public static async Task<HeatView> Mark(RecordsContext db, HeatView view, CancellationToken ct)
    {
        var evidence = new Evidence(view.Samples, view.Weighings, view.BurnDecisions, view.OfItself, new(view.Metal));
        var analyses = await Analyses(db, [.. view.Corrections.SelectMany(c => UsedIds.Of(c.Versions).AllAnalyses)], view.KnownAt, ct);
        return view with
        {
            Plan = view.Plan with { Stale = [.. await OfPlan(db, view.Plan, view.KnownAt, ct), .. evidence.OfTheHeatItself(view.Plan.Origin.EnteredAt)] },
            Corrections = [.. view.Corrections.Select(c => c with { Stale = OfCorrection(c, evidence, analyses) })],
            Ladles = await Mark(db, view.Ladles, evidence, view.KnownAt, ct),
        };
    }

    /// <summary>Marks the cards and decisions of treated ladles by the facts of their heat: one statement.</summary>
    public static async Task<IReadOnlyList<TreatedLadleView>> Mark(
        RecordsContext db, IReadOnlyList<TreatedLadleView> ladles, Evidence evidence, DateTimeOffset? known, CancellationToken ct)
    {
        var alloys = await Analyses(db, [.. ladles.SelectMany(l => l.Cards).SelectMany(c => UsedIds.Of(c.Versions).AllAnalyses)], known, ct);
        return
        [
            .. ladles.Select(ladle =>
            {
                List<PocketCardView> cards = [.. ladle.Cards.Select(c => c with { Stale = OfCard(c, evidence, alloys) })];
                return ladle with
                {
                    Cards = cards,
                    Decisions = [.. ladle.Decisions.Select(d => d with { Stale = OfDecision(d, ladle, cards, evidence) })],
                };
            }),
        ];
    }

    private static List<StaleNote> OfCorrection(BathCorrectionView correction, Evidence evidence, ILookup<long, StaleNote> analyses) =>
    [
        .. evidence.OfSample(correction.SampleId, correction.Origin.EnteredAt),
        .. evidence.OfAdditions(correction.SampleId, correction.Origin.EnteredAt),
        .. evidence.OfMass(correction.SampleId, correction.Origin.EnteredAt),
        .. evidence.OfTheHeatItself(correction.Origin.EnteredAt),
        .. UsedIds.Of(correction.Versions).AllAnalyses.SelectMany(id => analyses[id]).Where(n => n.At > correction.Origin.EnteredAt),
    ];

    private static List<StaleNote> OfCard(PocketCardView card, Evidence evidence, ILookup<long, StaleNote> alloys)
    {
        var used = UsedIds.Of(card.Versions);
        return
        [
            .. evidence.OfSample(used.BathSample, card.Origin.EnteredAt),
            .. evidence.OfAdditions(used.BathSample, card.Origin.EnteredAt),
            .. evidence.OfMixing(used.BathSample, card.Origin.EnteredAt),
            .. evidence.OfTheHeatItself(card.Origin.EnteredAt),
            .. used.AllAnalyses.SelectMany(id => alloys[id]).Where(n => n.At > card.Origin.EnteredAt),
        ];
    }

    private static List<StaleNote> OfDecision(CastingDecisionView decision, TreatedLadleView ladle, IEnumerable<PocketCardView> cards, Evidence evidence) =>
    [
        .. evidence.OfSample(decision.SampleId, decision.Origin.EnteredAt),
        .. ladle.Taps.Select(t => t.Origin).Where(o => o.EnteredAt <= decision.Origin.EnteredAt && o.CorrectedBy?.EnteredAt > decision.Origin.EnteredAt)
            .Select(o => Evidence.Note(StaleKind.Tap, o)),
        .. cards.SelectMany(c => c.Stale).Where(n => decision.SampleId is not null && n.At > decision.Origin.EnteredAt).Select(n => n with { Kind = StaleKind.PocketCard }),
    ];

    public static async Task<IReadOnlyList<StaleNote>> OfPlan(RecordsContext db, PlanView plan, DateTimeOffset? known, CancellationToken ct)
    {
        var ids = UsedIds.Of(plan.Versions).AllAnalyses.ToList();
        var analyses = (await Analyses(db, ids, known, ct)).SelectMany(n => n).Where(n => n.At > plan.Origin.EnteredAt);
        var until = known ?? DateTimeOffset.MaxValue;
        var heel = await db.Heels.Where(h => h.FurnaceId == plan.FurnaceId && h.EnteredAt <= plan.Origin.EnteredAt
                && !db.Heels.Any(l => l.SupersedesId == h.Id && l.EnteredAt <= plan.Origin.EnteredAt))
            .OrderByDescending(h => h.ObservedAt).ThenByDescending(h => h.Id).Select(h => new { h.Id, h.SampleId, h.ObservedAt }).FirstOrDefaultAsync(ct);
        var (used, sample, leftAt) = (heel?.Id, heel?.SampleId, heel?.ObservedAt ?? DateTimeOffset.UnixEpoch);
        // Or a heel that nobody knew of when the plan was made: one that came late, or from another furnace.
        var notes =
            from person in db.Users
            from fact in db.Samples.Where(s => s.SupersedesId == sample && sample != null).Select(s => new { s.PersonId, s.EnteredAt, s.Reason })
                .Concat(db.Heels.Where(h => (h.SupersedesId == used && used != null) || (h.FurnaceId == plan.FurnaceId && h.ObservedAt > leftAt && h.ObservedAt <= plan.Origin.ObservedAt)).Select(h => new { h.PersonId, h.EnteredAt, h.Reason }))
                .Concat(db.BurnDecisions.Where(b => b.SampleId == sample).Select(b => new { b.PersonId, b.EnteredAt, b.Reason }))
            where fact.PersonId == person.Id && fact.EnteredAt > plan.Origin.EnteredAt && fact.EnteredAt <= until
            select new StaleNote(StaleKind.Heel, person.DisplayName, fact.EnteredAt, fact.Reason);
        return [.. analyses, .. (await notes.ToListAsync(ct)).Distinct()];
    }

    private static async Task<ILookup<long, StaleNote>> Analyses(RecordsContext db, List<long> ids, DateTimeOffset? known, CancellationToken ct)
    {
        if (ids.Count == 0) return Array.Empty<StaleNote>().ToLookup(_ => 0L);
        var until = known ?? DateTimeOffset.MaxValue;
        return (await (
            from later in db.MaterialAnalyses
            join person in db.Users on later.PersonId equals person.Id
            where later.SupersedesId != null && ids.Contains(later.SupersedesId.Value) && later.EnteredAt <= until
            select new { Used = later.SupersedesId!.Value, person.DisplayName, later.EnteredAt, later.Reason }).ToListAsync(ct))
            .ToLookup(r => r.Used, r => new StaleNote(StaleKind.Analysis, r.DisplayName, r.EnteredAt, r.Reason));
    }
}

/// <summary>The facts of a heat that a card or a decision may have used.</summary>
internal sealed record Evidence(IReadOnlyList<SampleView> Samples, IReadOnlyList<WeighingView> Weighings, IReadOnlyList<BurnDecisionView> Burns, IReadOnlyList<HeatCorrectionView> OfTheHeat, MetalEvidence Metal)
{
    public static StaleNote Note(StaleKind kind, Origin origin) => new(kind, origin.CorrectedBy!.Person, origin.CorrectedBy.EnteredAt, origin.CorrectedBy.Reason);

    /// <summary>What became of a sample after something was made of it.</summary>
    public IEnumerable<StaleNote> OfSample(long? sampleId, DateTimeOffset madeAt) =>
        Samples.Where(s => s.Id == sampleId && s.Origin.CorrectedBy?.EnteredAt > madeAt).Select(s => Note(StaleKind.Sample, s.Origin))
            .Concat(Burns.Where(b => b.SampleId == sampleId && b.Origin.EnteredAt > madeAt)
                .Select(b => new StaleNote(StaleKind.Burn, b.Origin.Person, b.Origin.EnteredAt, b.Origin.Reason)));

    /// <summary>That the heat turned out to be of another grade or in another furnace after something was made for it.</summary>
    public IEnumerable<StaleNote> OfTheHeatItself(DateTimeOffset madeAt)
    {
        var later = OfTheHeat.Where(c => c.Origin.EnteredAt > madeAt).ToList();
        return later.Where(c => c.GradeCode != c.FormerGradeCode).Select(c => new StaleNote(StaleKind.Grade, c.Origin.Person, c.Origin.EnteredAt, c.Origin.Reason))
            .Concat(later.Where(c => c.IsOtherFurnace).Select(c => new StaleNote(StaleKind.Furnace, c.Origin.Person, c.Origin.EnteredAt, c.Origin.Reason)));
    }

    /// <summary>What became of the additions after the sample that were known when it was made, and those that were not known then: they came late, or from another heat.</summary>
    public IEnumerable<StaleNote> OfAdditions(long? sampleId, DateTimeOffset madeAt)
    {
        if (Samples.FirstOrDefault(s => s.Id == sampleId) is not { } sample) return [];
        return Weighed(o => o.ObservedAt > sample.Origin.ObservedAt, madeAt);
    }

    /// <summary>
    /// The same of all that says what mass the bath had: of what was weighed before the sample, whose analysis stays what it is, and of dips, pig-outs and pour-backs. Not where a dip
    /// that was known when it was made, and not yet taken back, said that mass.
    /// </summary>
    public IEnumerable<StaleNote> OfMass(long? sampleId, DateTimeOffset madeAt)
    {
        if (Samples.FirstOrDefault(s => s.Id == sampleId) is not { } sample) return [];
        return Weighed(o => o.ObservedAt <= sample.Origin.ObservedAt && !Metal.IsDippedAfter(o.ObservedAt, madeAt), madeAt).Concat(Metal.Corrected(sample.Origin.ObservedAt, madeAt));
    }

    /// <summary>The same for whoever uses the bath's analysis alone: it depends on the mass where something was mixed into the bath after the sample.</summary>
    public IEnumerable<StaleNote> OfMixing(long? sampleId, DateTimeOffset madeAt)
    {
        if (Samples.FirstOrDefault(s => s.Id == sampleId)?.Origin.ObservedAt is not { } sampledAt) return [];
        var isMixed = Weighings.Select(w => w.Origin).Concat(Metal.PouredBack).Any(o => o.ObservedAt > sampledAt && o.WasKnown(madeAt));
        return isMixed ? OfMass(sampleId, madeAt) : [];
    }

    private IEnumerable<StaleNote> Weighed(Func<Origin, bool> concerns, DateTimeOffset madeAt)
    {
        var weighed = Weighings.Select(w => w.Origin).Where(concerns).ToList();
        return weighed.Where(o => o.EnteredAt <= madeAt && o.CorrectedBy?.EnteredAt > madeAt).Select(o => Note(StaleKind.Weighing, o))
            .Concat(weighed.Where(o => o.EnteredAt > madeAt && o.ObservedAt <= madeAt && (o.CorrectsId is null || o.MovedFrom is not null))
                .Select(o => new StaleNote(StaleKind.MissedWeighing, o.Person, o.EnteredAt, o.Reason)));
    }
}
