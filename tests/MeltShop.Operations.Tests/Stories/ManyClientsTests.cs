using System.Collections.Concurrent;
using System.Diagnostics;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Sites;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Keeping;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Stories;

/// <summary>
/// Sixteen people at four furnaces weigh, tap, dip, count, correct, set burns aside, end heats and start others at once, some entries late; afterwards both ledgers
/// show at each dip and each count what was seen, and nothing that was acknowledged is missing.
/// </summary>
public sealed class ManyClientsTests
{
    private const int Clients = 16, Furnaces = 4, Seed = 612;

    private static readonly IReadOnlyList<string> Expected =
    [
        "state.wrong", "furnace.busy", "version.stale", "fact.corrected", "correction.nothing", "burn.aside", "burn.counts", "furnace.short", "heat.noBathSample",
        "furnace.taken", "furnace.capacity", "ladle.busy", "ladle.unpoured", "heat.startedAfter", "heat.metalAfter", "heat.sampleAfter",
    ];

    private readonly ConcurrentDictionary<Guid, string> done = new();
    private readonly ConcurrentDictionary<Guid, double> counted = new();
    private readonly ConcurrentBag<long> weighings = [], samples = [], dips = [], taps = [], closed = [];
    private readonly ConcurrentDictionary<int, long> heats = new();
    private readonly ConcurrentDictionary<string, int> refused = new();
    private readonly ConcurrentDictionary<DateTimeOffset, byte> times = new();
    private readonly List<long> plans = [], furnaces = [], ladles = [];
    private Shop shop = null!;

    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    /// <summary>What each of them does, or as much as gets done in as many seconds as MELTSHOP_SECONDS says: a slow machine takes longer and does no less.</summary>
    private const int Turns = 40;

    private static TimeSpan? Shift => int.TryParse(Environment.GetEnvironmentVariable("MELTSHOP_SECONDS"), out var seconds) ? TimeSpan.FromSeconds(seconds) : null;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task People_SixteenAtOnce_LoseNothingAndBothLedgersShowWhatWasSeen(RecordsProvider provider)
    {
        await using var opened = shop = await Shop.Open(provider);
        for (var n = 0; n < Furnaces; n++)
        {
            var furnace = n == 0 ? shop.FurnaceId : (await Shop.Do(shop.Get<AddFurnace>(), shop.Administrator, new(Guid.NewGuid(), shop.Now, $"F{n + 1}", $"Furnace {n + 1}", 3000, 1800))).Value;
            furnaces.Add(furnace);
            plans.Add((await Shop.Do(shop.Get<PlanCharge>(), shop.Melter, new(Guid.NewGuid(), shop.Now, new ChargeChoice(furnace, shop.GreyId, 2000)))).Value.PlanId);
        }

        ladles.AddRange([shop.LadleId, await shop.SecondLadle("L2"), await shop.SecondLadle("L3")]);
        var started = Stopwatch.GetTimestamp();
        await Task.WhenAll(Enumerable.Range(0, Clients).Select(n => Task.Run(() => Work(new Random(Seed + n), started), Soon)));

        TestContext.Current.TestOutputHelper!.WriteLine($"seed {Seed}: {done.Count} done, refused: {string.Join(", ", refused.Select(r => $"{r.Key} {r.Value}"))}");
        await NothingIsMissing();
        await EachDipAndCountShowsWhatWasSeen();
        Assert.Empty((await shop.Get<TrailCheck>().Run(Soon)).Faults);
    }

    private async Task Work(Random random, long started)
    {
        for (var turn = 0; Shift is { } shift ? Stopwatch.GetElapsedTime(started) < shift : turn < Turns; turn++)
        {
            var place = random.Next(Furnaces);
            if (!heats.TryGetValue(place, out var heat)) await Start(place);
            else await Act(random, place, heat);
        }
    }

    private async Task Act(Random random, int place, long heat)
    {
        var at = At(random);
        var (kg, material) = (random.Next(1, 400) / 8d, random.Next(2) == 0 ? shop.SteelId : shop.PigIronId);
        switch (random.Next(14))
        {
            case 0: await End(place, heat, at); break;
            case 1: await Dip(new(Guid.NewGuid(), at, await FurnaceOf(heat), random.Next(0, 2500), null, "load cell")); break;
            case 2: await Count(new(Guid.NewGuid(), at, material, StockKind.Counted, random.Next(0, 9000))); break;
            case 3: await Did(shop.Get<BookStock>(), shop.Melter, new(Guid.NewGuid(), at, material, StockKind.Received, kg)); break;
            case 4 or 5 when weighings.TryPeek(out var weighing):
                if (await Did(shop.Get<CorrectWeighing>(), shop.Melter, new(Guid.NewGuid(), shop.Now, weighing, heat, material, kg, false, "read wrongly")) is { Succeeded: true } right)
                    weighings.Add(right.Value);
                break;
            case 10: await Moved(random, heat); break;
            case 12: await Tap(random, heat); break;
            case 13 when taps.TryPeek(out var tap):
                if (await Did(shop.Get<CorrectTap>(), shop.Melter, new(Guid.NewGuid(), shop.Now, tap, random.Next(50, 400), null, "read wrongly")) is { Succeeded: true } tapped) taps.Add(tapped.Value);
                break;
            case 11 when dips.TryPeek(out var dip):
                if (await Did(shop.Get<CorrectMetal>(), shop.Melter, new(Guid.NewGuid(), shop.Now, dip, random.Next(0, 2500), null, "read wrongly")) is { Succeeded: true } read) dips.Add(read.Value);
                break;
            case 6 when samples.TryPeek(out var sample):
                await Did(shop.Get<SetBurnAside>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, sample, random.Next(1, 4), "cracked", random.Next(2) == 0));
                break;
            default:
                if (await Did(shop.Get<WeighIn>(), shop.Melter, new(Guid.NewGuid(), at, heat, material, kg, false)) is { Succeeded: true } weighed) weighings.Add(weighed.Value);
                break;
        }
    }

    /// <summary>Grey iron, which pours at once; where the furnace has too little, the ladle is emptied again.</summary>
    private async Task Tap(Random random, long id)
    {
        var heat = await shop.Heat(id);
        var kg = random.Next(50, 400);
        if (await Did(shop.Get<PreparePocket>(), shop.Melter, shop.Pocket(heat, kg) with { LadleId = ladles[random.Next(ladles.Count)] }) is not { Succeeded: true } prepared) return;
        var treated = await shop.Treated(prepared.Value.TreatedLadleId);
        if (await Did(shop.Get<RecordTap>(), shop.Melter, new(Guid.NewGuid(), shop.Now, treated.Id, treated.Version, kg, null)) is { Succeeded: true } tap) taps.Add(tap.Value.TapId);
        else await Did(shop.Get<AbandonPocket>(), shop.Melter, new(Guid.NewGuid(), shop.Now, treated.Id, treated.Version, "too little iron"));
    }

    /// <summary>Somebody says that the heat is in another furnace, or that one ended earlier.</summary>
    private async Task Moved(Random random, long id)
    {
        var ended = random.Next(2) == 0 && closed.TryPeek(out var last) ? last : (long?)null;
        var heat = await shop.Heat(ended ?? id);
        CorrectHeat.Command command = new(Guid.NewGuid(), shop.Now, heat.Id, heat.Version, heat.GradeId, null, "other button");
        if (heat.ClosedAt is { } closedAt && !times.TryAdd(closedAt.AddMicroseconds(-1), 0)) return;
        await Did(shop.Get<CorrectHeat>(), shop.Metallurgist, heat.ClosedAt is { } at
            ? command with { ClosedAt = at.AddMicroseconds(-1) } : command with { FurnaceId = furnaces[random.Next(Furnaces)] });
    }

    /// <summary>One in four waited in a tablet; no two things happen at the same microsecond.</summary>
    private DateTimeOffset At(Random random)
    {
        var at = shop.Now;
        if (random.Next(4) == 0) at = at.AddMicroseconds(-random.Next(1, 50));
        while (!times.TryAdd(at, 0)) at = at.AddMicroseconds(-1);
        return at;
    }

    private async Task Start(int place)
    {
        var outcome = await Did(shop.Get<StartHeat>(), shop.Melter, new(Guid.NewGuid(), shop.Now, plans[place]));
        if (!outcome.Succeeded) return;
        var burns = new[] { 3.5, 3.6, 3.7 }.Select(c => Shop.Burn(("C", c))).ToList();
        if (await Did(shop.Get<RecordSample>(), shop.Melter, new(Guid.NewGuid(), shop.Now, outcome.Value.HeatId, null, SampleKind.Bath, burns)) is { Succeeded: true } sample) samples.Add(sample.Value);
        heats[place] = outcome.Value.HeatId;
    }

    private async Task End(int place, long id, DateTimeOffset at)
    {
        var heat = await shop.Heat(id);
        if ((await Did(shop.Get<CloseHeat>(), shop.Melter, new(Guid.NewGuid(), at, id, heat.Version, 0))).Succeeded) { heats.TryRemove(place, out _); closed.Add(id); }
    }

    private async Task Dip(DipFurnace.Command dip)
    {
        if (!(await Did(shop.Get<DipFurnace>(), shop.Melter, dip)).Succeeded) return;
        await using var db = shop.Db();
        dips.Add(await db.FurnaceMetals.Where(m => m.EntryKey == dip.EntryKey && m.SupersedesId == null).Select(m => m.Id).SingleAsync(Soon));
    }

    private async Task Count(BookStock.Command count)
    {
        if ((await Did(shop.Get<BookStock>(), shop.Melter, count)).Succeeded) counted[count.EntryKey] = count.Kg;
    }

    private async Task<long> FurnaceOf(long heat) => (await shop.Heat(heat)).FurnaceId;

    private async Task<Outcome<TResult>> Did<TCommand, TResult>(Operation<TCommand, TResult> operation, Acting who, TCommand command)
        where TCommand : Command
    {
        var outcome = await operation.Run(who, command, Soon);
        if (outcome.Succeeded) done[command.EntryKey] = operation.GetType().Name;
        foreach (var finding in outcome.Findings)
        {
            Assert.Contains(finding.Code, Expected);
            refused.AddOrUpdate(finding.Code, 1, (_, many) => many + 1);
        }

        return outcome;
    }

    private async Task NothingIsMissing()
    {
        await using var db = shop.Db();
        var kept = await db.Entries.Select(e => e.Key).ToListAsync(Soon);
        Assert.Subset(kept.ToHashSet(), done.Keys.ToHashSet());
        await Once<Weighing>(db, "WeighIn", "CorrectWeighing");
        await Once<BurnDecision>(db, "SetBurnAside");
        await Once<Sample>(db, "RecordSample");
        var numbers = await db.Heats.OrderBy(h => h.Id).Select(h => h.Number).ToListAsync(Soon);
        Assert.Equal(Enumerable.Range(1, done.Values.Count(o => o == "StartHeat")).Select(n => $"TB-2026-{n:0000}"), numbers.Order(StringComparer.Ordinal));
        foreach (var sample in await db.Samples.Include(s => s.Means).Include(s => s.Burns).ThenInclude(b => b.Readings).ToListAsync(Soon))
            Assert.Equal(SampleMeans.Of(sample.Burns).Select(m => (m.Percent, m.Count)), sample.Means.Select(m => (m.Percent, m.Count)));
    }

    private async Task Once<TFact>(RecordsContext db, params string[] operations)
        where TFact : Fact
    {
        var kept = await db.Set<TFact>().Select(f => f.EntryKey).ToListAsync(Soon);
        Assert.Equal(done.Where(d => operations.Contains(d.Value)).Select(d => d.Key).Order(), kept.Order());
    }

    /// <summary>The entry that a fact came with first, whatever took something up since.</summary>
    private static Guid Root<TFact>(TFact fact, Dictionary<long, TFact> all)
        where TFact : Fact
    {
        while (fact.SupersedesId is { } id) fact = all[id];
        return fact.EntryKey;
    }

    private async Task EachDipAndCountShowsWhatWasSeen()
    {
        await using var db = shop.Db();
        var metal = await db.InForce<FurnaceMetal>().AsNoTracking().ToListAsync(Soon);
        var lines = await db.FurnaceMetals.AsNoTracking().ToDictionaryAsync(m => m.Id, Soon);
        foreach (var dip in metal.Where(m => m.Kind == FurnaceMetalKind.Dipped && done.GetValueOrDefault(Root(m, lines)) == nameof(DipFurnace)))
            Assert.Equal(dip.LevelKg!.Value, metal.Where(m => m.FurnaceId == dip.FurnaceId && m.ObservedAt <= dip.ObservedAt).Sum(m => m.Kg), 1e-6);

        var stock = await db.InForce<StockFact>().AsNoTracking().ToListAsync(Soon);
        var facts = await db.StockFacts.AsNoTracking().ToDictionaryAsync(s => s.Id, Soon);
        foreach (var count in stock.Where(s => s.Kind == StockKind.Counted))
        {
            if (counted.TryGetValue(Root(count, facts), out var kg))
                Assert.Equal(kg, stock.Where(s => s.MaterialId == count.MaterialId && s.ObservedAt <= count.ObservedAt).Sum(s => s.Kg), 1e-6);
        }

        // What a heat had is where the heat is.
        var places = await db.Heats.ToDictionaryAsync(h => h.Id, h => h.FurnaceId, Soon);
        Assert.All(metal.Where(m => m.HeatId is not null), m => Assert.Equal(places[m.HeatId!.Value], m.FurnaceId));

        // Nothing was put into a furnace behind the end of its heat.
        var late = from weighing in db.Weighings.Where(w => w.SupersedesId == null)
                   join end in db.HeatSteps.Where(s => s.State == HeatState.Closed) on weighing.HeatId equals end.HeatId
                   where db.TrailRows.Single(r => r.EntryKey == weighing.EntryKey).Number > db.TrailRows.Single(r => r.EntryKey == end.EntryKey).Number
                   select weighing;
        Assert.Equal(0, await late.CountAsync(Soon));
        // A ladle is in one heat at a time, and its iron left the furnace by the mass that stands now.
        var open = await db.TreatedLadles.Where(l => l.State == TreatedLadleState.Prepared || l.State == TreatedLadleState.Tapped || l.State == TreatedLadleState.Pouring).Select(l => l.LadleId).ToListAsync(Soon);
        Assert.Equal(open.Distinct().Count(), open.Count);
        var tapped = await db.InForce<Tap>().AsNoTracking().ToListAsync(Soon);
        Assert.NotEmpty(tapped);
        Assert.Equal(tapped.Sum(t => t.Kg), -metal.Where(m => m.Kind == FurnaceMetalKind.Tapped).Sum(m => m.Kg), 1e-6);
        Assert.NotEmpty(counted);
        Assert.Contains("CloseHeat", done.Values);
    }
}
