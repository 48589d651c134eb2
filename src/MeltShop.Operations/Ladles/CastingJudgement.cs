using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Castings;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Laboratory;
using MeltShop.Records;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>What a decision about castings needs, when it is made and when it is corrected.</summary>
internal static class CastingJudgement
{
    public static readonly IReadOnlyList<string> ReleaseRoles = [Role.Metallurgist, Role.Inspector];

    private static readonly IReadOnlyList<string> AgainstWindowRoles = [Role.Inspector];

    public static void Check(CastingVerdict verdict, long? sampleId, FieldCheck fields)
    {
        fields.Choice("verdict", verdict);
        if (verdict == CastingVerdict.Downgrade) fields.Add("verdict", "downgrade.apart");
        if (verdict == CastingVerdict.Release && sampleId is null) fields.Add("sampleId", "sample.lastMetalMissing");
    }

    /// <summary>What the sample that was seen has against the verdict; nothing where none was seen.</summary>
    public static async Task<IReadOnlyList<Finding>> Against(
        Writing writing, TreatedLadle treated, long? seenId, CastingVerdict verdict, string? reason, CastingUnit? unit,
        CancellationToken cancellation)
    {
        if (seenId is not { } sampleId) return [];
        var sample = await writing.Db.InForce<Sample>().AsNoTracking()
            .Where(s => s.TreatedLadleId == treated.Id && s.Kind == SampleKind.LastMetal && s.Means.Count > 0)
            .OrderByDescending(s => s.ObservedAt).ThenByDescending(s => s.Id)
            .FirstOrDefaultAsync(cancellation);
        if (sample?.Id != sampleId) return [new Finding("sampleId", sample is null ? "sample.lastMetalMissing" : "sample.notTheLast")];
        if (verdict != CastingVerdict.Release) return [];

        var verdicts = await PouredIron.Verdicts(writing.Db, treated, sample, cancellation);
        var units = await CastingUnits.Load(writing.Db, treated.Id, cancellation);
        List<Finding> outside =
        [
            .. verdicts.Where(v => v.Standing != WindowStanding.Inside).Select(Finding),
            .. await Poured(writing, treated, mould => Concerns(units, unit, mould), cancellation),
            .. await Tested(writing, treated, piece => unit is null ? units.Of(piece)?.Apart is null : CastingUnits.IsSame(piece, unit.Name), cancellation),
        ];
        if (outside.Count == 0) return [];
        if (!writing.Acting.HoldsAny(AgainstWindowRoles)) return [.. outside, new Finding("", "right.missing", string.Join(", ", AgainstWindowRoles))];
        return string.IsNullOrWhiteSpace(reason) ? [.. outside, new Finding("reason", "text.missing")] : [];
    }

    private static Finding Finding(WindowVerdict verdict) => verdict.Standing switch
    {
        WindowStanding.NotMeasured => new Finding("sampleId", "window.notMeasured", verdict.Quantity, string.Join(", ", verdict.Missing)),
        WindowStanding.NotJudged => new Finding("sampleId", "window.notJudged", verdict.Quantity),
        WindowStanding.UnderLeast => new Finding("sampleId", "window.underLeast", verdict.Quantity, verdict.Value!, verdict.Least!),
        _ => new Finding("sampleId", "window.overMost", verdict.Quantity, verdict.Value!, verdict.Most!),
    };

    // A unit is judged by its own moulds, or by all where nobody said which; the rest of the ladle without those that are decided about apart.
    private static bool Concerns(CastingUnits units, CastingUnit? unit, string mould) =>
        unit is null ? !units.All.Any(u => u.Apart is not null && u.Holds(mould)) : unit.Moulds.Count == 0 || unit.Holds(mould);

    // A test that fails speaks against its castings; one that is not made yet is the inspector's to wait for.
    private static async Task<IEnumerable<Finding>> Tested(Writing writing, TreatedLadle treated, Func<string, bool> concerns, CancellationToken cancellation) =>
        from tested in await TestedCastings.Load(writing.Db, treated.Id, cancellation)
        where concerns(tested.Piece.TestUnit)
        from verdict in tested.Verdicts
        where verdict.Standing == PropertyStanding.Fails
        select new Finding("sampleId", "test.fails", tested.Piece.Label, verdict.Property.ToString(), verdict.Value!.Value);

    // What was poured after a limit, or while a sample said too little magnesium, is no better for a last metal that is inside.
    private static async Task<IEnumerable<Finding>> Poured(Writing writing, TreatedLadle treated, Func<string, bool> concerns, CancellationToken cancellation)
    {
        var late = await Late(writing.Db, treated.Id, cancellation);
        var floor = await writing.Db.InForce<PocketCard>().Where(c => c.TreatedLadleId == treated.Id).MaxAsync(c => c.MgFloorPercent, cancellation);
        var low = await writing.Db.InForce<Sample>().AsNoTracking()
            .Where(s => s.TreatedLadleId == treated.Id && s.Kind == SampleKind.AfterTreatment)
            .SelectMany(s => s.Means).Where(m => m.Element == Element.Mg && m.Percent < floor).Select(m => m.Percent).ToListAsync(cancellation);
        return
        [
            .. await FromLow(writing.Db, treated.Id, concerns, cancellation),
            .. late.Where(m => concerns(m.Mould.Label)).Select(m => new Finding("sampleId", "mould.late", m.Mould.Label, m.Kind.ToString())),
            .. low.Select(percent => new Finding("sampleId", "sample.lowMagnesium", percent, floor!.Value)),
        ];
    }

    // Iron of a ladle that came back low speaks against what was poured with it, whatever the mixture's own last metal says.
    private static async Task<IEnumerable<Finding>> FromLow(RecordsContext db, long treatedLadleId, Func<string, bool> concerns, CancellationToken cancellation)
    {
        var sources = await LowSources.Of(db, treatedLadleId, cancellation);
        if (sources.Count == 0) return [];
        var moulds = await db.InForce<PouredMould>().AsNoTracking().Where(m => m.TreatedLadleId == treatedLadleId && !m.IsWithdrawn).ToListAsync(cancellation);
        return sources.Where(s => moulds.Count == 0 || moulds.Any(m => concerns(m.Label) && s.Concerns(m.ObservedAt)))
            .Select(s => new Finding("sampleId", "ladle.lowSource", s.Ordinal, s.HeatNumber, s.MgPercent, s.FloorPercent));
    }

    // By what was known when it was ticked off, and by what is known now: a clock may have been put right since.
    private static async Task<List<(PouredMould Mould, PouringLimitKind Kind)>> Late(RecordsContext db, long treatedLadleId, CancellationToken cancellation)
    {
        var moulds = await db.InForce<PouredMould>().AsNoTracking()
            .Where(m => m.TreatedLadleId == treatedLadleId && !m.IsWithdrawn).OrderBy(m => m.ObservedAt).ToListAsync(cancellation);
        var late = new List<(PouredMould, PouringLimitKind)>();
        foreach (var mould in moulds)
        {
            var kind = mould.LateFor ?? PouringLimits.ReachedBefore(await LadleTimesRows.One(db, treatedLadleId, mould.ObservedAt, cancellation), mould.ObservedAt)?.Kind;
            if (kind is { } limit) late.Add((mould, limit));
        }

        return late;
    }
}
