using MeltShop.Operations.Importing.Rows;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Importing.Subjects;

/// <summary>The heats, furnaces and ladles that the samples of a file name, read at once and not sample by sample.</summary>
internal sealed record NamedThings(
    IReadOnlyDictionary<string, NamedHeat> ByNumber, ILookup<long, NamedHeat> ByFurnace, IReadOnlyDictionary<string, long> Furnaces,
    IReadOnlyDictionary<string, long> Ladles, ILookup<long, Filling> Tapped)
{
    /// <summary>Fillings by heat, from when their pocket was laid: the base iron is sampled before the tap is weighed.</summary>
    public ILookup<long, Filling> Laid { get; private init; } = Array.Empty<Filling>().ToLookup(f => f.HeatId);

    /// <summary>Reference materials in use, by code; none where no row names one.</summary>
    public IReadOnlyDictionary<string, long> References { get; private init; } = new Dictionary<string, long>();

    public static async Task<NamedThings> Load(RecordsContext db, IReadOnlyList<ImportSample> samples, CancellationToken ct)
    {
        var furnaces = await db.Furnaces.ToDictionaryAsync(f => f.Code, f => f.Id, ct);
        var ladles = await db.Ladles.ToDictionaryAsync(l => l.Code, l => l.Id, ct);
        var numbers = samples.Select(s => s.Subject.Heat).OfType<string>().Distinct().ToList();
        var byNumber = await Heats(db.Heats.Where(h => EF.Parameter(numbers).Contains(h.Number)), ct);
        var inFurnace = samples.Where(s => s.Subject is { Heat: null, Furnace: not null }).ToList();
        var byFurnace = inFurnace.Count == 0 ? [] : await InFurnace(db, inFurnace, furnaces, ct);
        var heats = byNumber.Concat(byFurnace).Select(h => h.Id).Distinct().ToList();
        var needsLadles = samples.Any(s => s.Subject.Ladle is not null);
        var tapped = needsLadles ? await Tappings(db, heats, ct) : [];
        return new(byNumber.ToDictionary(h => h.Number), byFurnace.ToLookup(h => h.FurnaceId), furnaces, ladles, tapped.ToLookup(t => t.HeatId))
        {
            Laid = (needsLadles ? await Layings(db, heats, ct) : []).ToLookup(f => f.HeatId),
            References = samples.Any(s => s.Subject.Reference is not null)
                ? await db.ReferenceMaterials.Where(r => r.IsActive).ToDictionaryAsync(r => r.Code, r => r.Id, ct) : new Dictionary<string, long>(),
        };
    }

    /// <summary>The heats that were in the furnaces while the coins were taken, and a day before: their ladles are poured when they are closed already.</summary>
    private static Task<List<NamedHeat>> InFurnace(
        RecordsContext db, List<ImportSample> samples, Dictionary<string, long> furnaces, CancellationToken ct)
    {
        var ids = samples.Select(s => s.Subject.Furnace!).Distinct().Where(furnaces.ContainsKey).Select(code => furnaces[code]).ToList();
        var (first, last) = (samples.Min(s => s.TakenAt).AddDays(-1), samples.Max(s => s.TakenAt));
        return Heats(db.Heats.Where(h => ids.Contains(h.FurnaceId) && h.StartedAt <= last && (h.ClosedAt == null || h.ClosedAt >= first)), ct);
    }

    private static Task<List<NamedHeat>> Heats(IQueryable<Heat> which, CancellationToken ct) =>
        which.Select(h => new NamedHeat(h.Id, h.Number, h.FurnaceId, h.State, h.StartedAt, h.ClosedAt)).ToListAsync(ct);

    private static Task<List<Filling>> Tappings(RecordsContext db, List<long> heats, CancellationToken ct) => (
        from ladle in Filled(db, heats)
        join tap in db.InForce<Tap>() on ladle.Id equals tap.TreatedLadleId
        select new Filling(ladle.Id, ladle.HeatId, ladle.LadleId, tap.ObservedAt)).ToListAsync(ct);

    private static Task<List<Filling>> Layings(RecordsContext db, List<long> heats, CancellationToken ct) => (
        from ladle in Filled(db, heats)
        join card in db.InForce<PocketCard>() on ladle.Id equals card.TreatedLadleId
        select new Filling(ladle.Id, ladle.HeatId, ladle.LadleId, card.ObservedAt)).ToListAsync(ct);

    private static IQueryable<TreatedLadle> Filled(RecordsContext db, List<long> heats) =>
        db.TreatedLadles.Where(ladle => EF.Parameter(heats).Contains(ladle.HeatId) && ladle.State != TreatedLadleState.Abandoned);
}

internal sealed record NamedHeat(long Id, string Number, long FurnaceId, HeatState State, DateTimeOffset StartedAt, DateTimeOffset? ClosedAt)
{
    public bool WasInFurnace(DateTimeOffset instant) => StartedAt <= instant && !(ClosedAt < instant);
}

/// <param name="At">When its pocket was laid, or when its tap ended.</param>
internal sealed record Filling(long Id, long HeatId, long LadleId, DateTimeOffset At);
