using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Sites;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Ladles;

/// <summary>A ladle before, during and after its treatment.</summary>
public sealed class LadlePage
{
    private readonly IDbContextFactory<RecordsContext> contexts;
    private readonly JoinedReads<long, LadleView?> reads;

    public LadlePage(IDbContextFactory<RecordsContext> contexts) => (this.contexts, reads) = (contexts, new(Read));

    /// <summary>A treated ladle, or null where there is none with this id. Who asks at the same time is answered by one reading.</summary>
    public Task<LadleView?> Load(long treatedLadleId, CancellationToken ct = default) => reads.Of(treatedLadleId, ct);

    /// <summary>What the next ladle of a heat is prepared from, or null where there is no such heat.</summary>
    public async Task<LadleView?> Prepare(long heatId, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        return await View(db, heatId, null, ct);
    }

    /// <summary>The same as it stands inside a transaction, for the operation that stores a card.</summary>
    public static Task<LadleView?> Prepare(RecordsContext db, long heatId, CancellationToken ct)
    {
        ArgumentNullException.ThrowIfNull(db);
        return View(db, heatId, null, ct);
    }

    private async Task<LadleView?> Read(long treatedLadleId)
    {
        await using var db = await contexts.CreateDbContextAsync();
        var treated = (await TreatedLadleRows.Load(db, db.TreatedLadles.Where(l => l.Id == treatedLadleId), null, CancellationToken.None)).SingleOrDefault();
        return treated is null ? null : await View(db, treated.HeatId, treated, CancellationToken.None);
    }

    private static async Task<LadleView?> View(RecordsContext db, long heatId, TreatedLadleView? treated, CancellationToken ct)
    {
        if (await HeatHeadView.Load(db, heatId, ct) is not { } head) return null;
        var grade = (await GradeRows.Load(db.Grades.Where(g => g.Id == head.GradeId), ct)).Single();
        var ladles = await Equipment(db, ct);
        var additions = (await db.WithLots(await MaterialRows.Load(
            db, db.Materials.Where(m => m.IsActive && (m.Uses & (MaterialUses.Treatment | MaterialUses.Inoculation | MaterialUses.BathAddition)) != 0)
                .OrderBy(m => m.Code), ct), ct)).InNaturalOrder(m => m.Code);
        var lastBath = await SampleRows.Last(db, heatId, SampleKinds.OfTheBath, ct);
        var samples = treated is null ? [] : await SampleRows.Load(db, db.Samples.Where(s => s.TreatedLadleId == treated.Id), null, ct);
        if (treated is not null)
        {
            var evidence = new Evidence(
                await HeatFacts.Samples(db, heatId, null, ct), await HeatFacts.Weighings(db, heatId, null, ct), await HeatFacts.BurnDecisions(db, heatId, null, ct),
                await HeatFacts.OfItself(db, heatId, null, ct), new(await HeatFacts.Metal(db, heatId, null, ct)));
            treated = (await Staleness.Mark(db, [treated], evidence, null, ct))[0];
        }

        var temperatures = await HeatFacts.Temperatures(db, heatId, null, ct);
        var last = await db.TreatedLadles.Where(l => l.HeatId == heatId).MaxAsync(l => (int?)l.Ordinal, ct);
        var standing = treated is null ? (Others: [], Vessels: []) : await OtherVessels.Load(db, treated, ladles, ct);
        return new(
            head, grade, [.. ladles.Where(l => !PouringVessel.Is(l.Process))], [.. additions.Where(m => m.Uses.HasFlag(MaterialUses.Treatment))],
            [.. additions.Where(m => m.Uses.HasFlag(MaterialUses.Inoculation))], lastBath, treated, samples,
            [.. temperatures.Where(t => t.TreatedLadleId == treated?.Id)], (last ?? 0) + 1)
        {
            Covers = [.. additions.Where(m => m.Kind == MaterialKind.Cover)],
            Coins = treated is null ? [] : await CoinRows.Load(db, CoinRows.Waiting(db).Where(c => c.TreatedLadleId == treated.Id), ct),
            Instruments = await InstrumentStates.Load(db, [.. samples.Select(s => s.Instrument).OfType<InstrumentView>().DistinctBy(i => i.Id)], ct),
            LastWedge = await SampleRows.Last(db, heatId, [SampleKind.ChillWedge], ct),
            PearliteFormers = [.. additions.Where(IsPearliteFormer)],
            Pouring = treated is null ? null : await PouringRows.Load(db, treated, ct),
            Others = standing.Others,
            Vessels = standing.Vessels,
            OpenHeats = treated is null ? [] : await OpenHeats(db, ct),
        };
    }

    // Nearly pure copper or tin: what else the yard has for the bath brings other elements along.
    private static bool IsPearliteFormer(MaterialView material)
    {
        if (material.Analysis?.Analysis() is not { } analysis) return false;
        return analysis.OrZero(Element.Cu) + analysis.OrZero(Element.Sn) >= 90;
    }

    private static async Task<IReadOnlyList<LadleEquipment>> Equipment(RecordsContext db, CancellationToken ct)
    {
        var ladles = await db.Ladles.AsNoTracking().Where(l => l.IsActive).ToListAsync(ct);
        var used = await EquipmentPage.LastUsed(db, ct);
        return ladles.Select(l => LadleEquipment.Of(l, used.TryGetValue(l.Id, out var last) ? last : null)).InNaturalOrder(l => l.Code);
    }

    private static async Task<IReadOnlyList<OpenHeat>> OpenHeats(RecordsContext db, CancellationToken ct) => await (
        from heat in db.Heats
        join furnace in db.Furnaces on heat.FurnaceId equals furnace.Id
        where FurnaceRows.InTheFurnace.Contains(heat.State)
        orderby heat.Id
        select new OpenHeat(heat.Id, heat.Number, furnace.Name)).ToListAsync(ct);
}
