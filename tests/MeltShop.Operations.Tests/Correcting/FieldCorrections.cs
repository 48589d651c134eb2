using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Castings;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Grades;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Sites;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records.Castings;
using MeltShop.Records.Grades;
using MeltShop.Records.Heats;
using MeltShop.Records.Keeping;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Heats;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Correcting;

/// <summary>How each field of a heat and of its facts is corrected, three times to another value each.</summary>
internal static class FieldCorrections
{
    /// <summary>Two heats with a ladle each, in two furnaces.</summary>
    public sealed record Told(Shop Shop, long[] Heats, long[] Ladles, long[] Instruments)
    {
        public long Metal { get; init; }
    }

    /// <param name="Start">Records a fact and answers it.</param>
    /// <param name="Correct">Corrects it the n-th time, 0 to 2, and answers the one that stands now.</param>
    /// <param name="Chain">The fact and its corrections with the value of the field.</param>
    public sealed record Field(
        Type Fact, string Property, Func<Told, Task<long>> Start, Func<Told, long, int, Acting, string, Task<long>> Correct,
        Func<Shop, long, Task<List<(Fact Fact, string Value)>>> Chain)
    {
        public string Name => $"{Fact.Name}.{Property}";
    }

    public static IReadOnlyList<Field> All { get; } =
    [
        .. OfWeighings(), .. OfTemperatures(), .. OfSamples(), .. OfFigures(), .. OfTaps(), .. OfDips(), .. OfPigs(), .. OfDecisions(), .. OfTestPieces(),
    ];

    /// <summary>The values that each field of the heat itself takes.</summary>
    public static IReadOnlyList<(string Field, Func<Shop, Heat, Task<object[]>> Values)> OfTheHeat { get; } =
    [
        (nameof(Heat.GradeId), async (shop, heat) => { var other = await OtherGrade(shop); return [other, heat.GradeId, other]; }),
        (nameof(Heat.FurnaceId), async (shop, heat) => { var other = await Furnace(shop, "of the heat"); return [other, heat.FurnaceId, other]; }),
        (nameof(Heat.StartedAt), (_, heat) => Task.FromResult<object[]>([heat.StartedAt.AddMinutes(-3), heat.StartedAt.AddMinutes(-1), heat.StartedAt.AddMinutes(-2)])),
        (nameof(Heat.ClosedAt), (_, heat) => Task.FromResult<object[]>([heat.ClosedAt!.Value.AddMinutes(-3), heat.ClosedAt.Value.AddMinutes(2), heat.ClosedAt.Value.AddMinutes(-1)])),
        (nameof(Heat.HeelKg), (_, _) => Task.FromResult<object[]>([120d, 0d, 80.5])),
    ];

    public static TimelineKind KindOf(Fact fact) => fact switch
    {
        Weighing => TimelineKind.Weighing,
        TemperatureReading => TimelineKind.Temperature,
        Sample => TimelineKind.Sample,
        Tap => TimelineKind.Tap,
        FurnaceMetal => TimelineKind.Metal,
        _ => TimelineKind.CastingDecision,
    };

    public static async Task<Told> Tell(Shop shop)
    {
        var heat = await shop.Bath();
        var ladle = await shop.Poured(heat);
        var furnace = await Furnace(shop, "beside");
        var plan = await Shop.Do(shop.Get<PlanCharge>(), shop.Melter, new(Guid.NewGuid(), shop.Now, new ChargeChoice(furnace, shop.DuctileId, 1500)));
        var other = (await Shop.Do(shop.Get<StartHeat>(), shop.Melter, new(Guid.NewGuid(), shop.Now, plan.Value.PlanId))).Value.HeatId;
        var second = await shop.Poured(await shop.Heat(heat.Id), 300, ladleId: await shop.SecondLadle());
        foreach (var label in new[] { "1", "2" }) await shop.Mould(second, label, 40);
        long[] instruments = [await Instrument(shop, "S1"), await Instrument(shop, "S2")];
        shop.Clock.Advance(5);
        return new(shop, [heat.Id, other], [ladle.Id, second.Id], instruments);
    }

    /// <summary>A heat that is over, with a minute of room on both sides.</summary>
    public static async Task<Heat> ClosedHeat(Shop shop)
    {
        shop.Clock.Advance(30);
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.SteelId, 500);
        await shop.Sample(heat, SampleKind.Bath, ("C", 3.6), ("Si", 1.5));
        shop.Clock.Advance(30);
        Assert.True((await shop.Close(await shop.Heat(heat.Id), await shop.InFurnace())).Succeeded);
        shop.Clock.Advance(30);
        return await shop.Heat(heat.Id);
    }

    public static async Task Correct(Shop shop, long heatId, string field, object value, Acting who, string reason)
    {
        var heat = await shop.Heat(heatId);
        var command = new CorrectHeat.Command(Guid.NewGuid(), shop.Now, heat.Id, heat.Version, heat.GradeId, null, reason);
        typeof(CorrectHeat.Command).GetProperty(field)!.SetValue(command, value);
        var outcome = await Shop.Do(shop.Get<CorrectHeat>(), who, command);
        Assert.True(outcome.Succeeded, $"{field}: {string.Join(", ", outcome.Findings)}");
    }

    private static IEnumerable<Field> OfWeighings()
    {
        static Task<long> Start(Told t) => Done(t.Shop.Get<WeighIn>(), t.Shop.Melter, new(Guid.NewGuid(), t.Shop.Now, t.Heats[0], t.Shop.SteelId, 10, true) { Lot = "first" });
        return Of<Weighing, CorrectWeighing.Command>(
            Start, (t, w, reason) => new(Guid.NewGuid(), t.Shop.Now, w.Id, w.HeatId, w.MaterialId, w.Kg, w.IntoBath, reason, w.ObservedAt) { Lot = w.Lot ?? "" },
            (t, who, command) => Done(t.Shop.Get<CorrectWeighing>(), who, command),
            (nameof(Weighing.HeatId), (t, n, c) => c with { HeatId = t.Heats[(n + 1) % 2] }),
            (nameof(Weighing.MaterialId), (t, n, c) => c with { MaterialId = n % 2 == 0 ? t.Shop.PigIronId : t.Shop.SteelId }),
            (nameof(Weighing.Kg), (_, n, c) => c with { Kg = 11 + n }),
            (nameof(Weighing.IntoBath), (_, n, c) => c with { IntoBath = n % 2 == 1 }),
            (nameof(Weighing.Lot), (_, n, c) => c with { Lot = new[] { "17", "", "18 b" }[n] }),
            (nameof(Fact.ObservedAt), (_, n, c) => c with { HappenedAt = c.HappenedAt!.Value.AddSeconds(-1 - n) }));
    }

    private static IEnumerable<Field> OfTemperatures()
    {
        static Task<long> Start(Told t) => Done(t.Shop.Get<RecordTemperature>(), t.Shop.Melter, new(Guid.NewGuid(), t.Shop.Now, t.Heats[0], null, 1487));
        return Of<TemperatureReading, CorrectTemperature.Command>(
            Start, (t, r, reason) => new(Guid.NewGuid(), t.Shop.Now, r.Id, r.HeatId, r.TreatedLadleId, r.TemperatureC, reason, r.ObservedAt),
            (t, who, command) => Done(t.Shop.Get<CorrectTemperature>(), who, command),
            (nameof(TemperatureReading.HeatId), (t, n, c) => c with { HeatId = t.Heats[(n + 1) % 2] }),
            (nameof(TemperatureReading.TreatedLadleId), (t, n, c) => c with { TreatedLadleId = t.Ladles[n % 2] }),
            (nameof(TemperatureReading.TemperatureC), (_, n, c) => c with { TemperatureC = 1470 + n }),
            (nameof(Fact.ObservedAt), (_, n, c) => c with { HappenedAt = c.HappenedAt!.Value.AddSeconds(-1 - n) }));
    }

    private static IEnumerable<Field> OfSamples()
    {
        static async Task<long> Start(Told t) => await t.Shop.Sample(await t.Shop.Heat(t.Heats[0]), SampleKind.Bath, ("C", 3.65), ("Si", 1.5));
        return Of<Sample, CorrectSample.Command>(
            Start, (t, s, reason) => new(Guid.NewGuid(), t.Shop.Now, s.Id, s.HeatId, s.TreatedLadleId, s.Kind, null, s.CoinNumber, s.Remarks, reason, s.ObservedAt, s.GreyFracture, null, s.InstrumentId),
            (t, who, command) => Done(t.Shop.Get<CorrectSample>(), who, command),
            (nameof(Sample.HeatId), (t, n, c) => c with { HeatId = t.Heats[(n + 1) % 2] }),
            (nameof(Sample.TreatedLadleId), (t, n, c) => c with { TreatedLadleId = t.Ladles[n % 2], Kind = SampleKind.AfterTreatment }),
            (nameof(Sample.Kind), (_, n, c) => c with { Kind = n % 2 == 0 ? SampleKind.AfterCorrection : SampleKind.Bath }),
            (nameof(Sample.CoinNumber), (_, n, c) => c with { CoinNumber = new[] { "17", null, "18" }[n] }),
            (nameof(Sample.Remarks), (_, n, c) => c with { Remarks = new[] { "thin", null, "cracked" }[n] }),
            (nameof(Sample.InstrumentId), (t, n, c) => c with { InstrumentId = t.Instruments[n % 2] }),
            (nameof(Sample.GreyFracture), (_, n, c) => c with { GreyFracture = n % 2 == 0 }),
            (nameof(Sample.Burns), (_, n, c) => c with { Burns = [Shop.Burn(("C", 3.6 + (n * 0.01)), ("Si", 1.5))] }),
            (nameof(Fact.ObservedAt), (_, n, c) => c with { HappenedAt = c.HappenedAt!.Value.AddSeconds(-1 - n) }));
    }

    private static IEnumerable<Field> OfFigures()
    {
        static Task<long> Start(Told t) => Done(t.Shop.Get<RecordSample>(), t.Shop.Melter, new(Guid.NewGuid(), t.Shop.Now, t.Heats[0], null, SampleKind.ChillWedge, []) { Figures = [new(FigureQuantity.ChillMm, 6, "6")] });
        return Of<Sample, CorrectSample.Command>(
            Start, (t, s, reason) => new(Guid.NewGuid(), t.Shop.Now, s.Id, s.HeatId, null, s.Kind, null, null, null, reason),
            (t, who, command) => Done(t.Shop.Get<CorrectSample>(), who, command),
            (nameof(Sample.Figures), (_, n, c) => c with { Figures = [new(FigureQuantity.ChillMm, 7 + n, $"{7 + n}")] }));
    }

    private static IEnumerable<Field> OfTaps()
    {
        static async Task<long> Start(Told t)
        {
            await using var db = t.Shop.Db();
            return await db.Taps.Where(tap => tap.TreatedLadleId == t.Ladles[0] && !db.Taps.Any(later => later.SupersedesId == tap.Id)).Select(tap => tap.Id).SingleAsync();
        }

        return Of<Tap, CorrectTap.Command>(
            Start, (t, tap, reason) => new(Guid.NewGuid(), t.Shop.Now, tap.Id, tap.Kg, tap.TemperatureC, reason, tap.ObservedAt),
            (t, who, command) => Done(t.Shop.Get<CorrectTap>(), who, command),
            (nameof(Tap.Kg), (_, n, c) => c with { Kg = 880 + n }),
            (nameof(Tap.TemperatureC), (_, n, c) => c with { TemperatureC = new double?[] { 1470, null, 1475 }[n] }),
            (nameof(Fact.ObservedAt), (_, n, c) => c with { HappenedAt = c.HappenedAt!.Value.AddSeconds(-1 - n) }));
    }

    private static IEnumerable<Field> OfDips()
    {
        static Task<long> Start(Told t) => LastLine(t, () => Done(t.Shop.Get<DipFurnace>(), t.Shop.Melter, new(Guid.NewGuid(), t.Shop.Now, t.Shop.FurnaceId, 600, null, "rod", 40)));
        return Of<FurnaceMetal, CorrectMetal.Command>(
            Start, (t, m, reason) => new(Guid.NewGuid(), t.Shop.Now, m.Id, m.LevelKg!.Value, m.PlusMinusKg, reason, m.ObservedAt),
            (t, who, command) => Done(t.Shop.Get<CorrectMetal>(), who, command),
            (nameof(FurnaceMetal.LevelKg), (_, n, c) => c with { Kg = 610 + n }),
            (nameof(FurnaceMetal.PlusMinusKg), (_, n, c) => c with { PlusMinusKg = new double?[] { 30, null, 15 }[n] }),
            (nameof(Fact.ObservedAt), (_, n, c) => c with { HappenedAt = c.HappenedAt!.Value.AddSeconds(-1 - n) }));
    }

    private static IEnumerable<Field> OfPigs()
    {
        static Task<long> Start(Told t) => LastLine(t, () => Done(t.Shop.Get<PigOut>(), t.Shop.Melter, new(Guid.NewGuid(), t.Shop.Now, t.Heats[0], 20, null)));
        return Of<FurnaceMetal, CorrectMetal.Command>(
            Start, (t, m, reason) => new(Guid.NewGuid(), t.Shop.Now, m.Id, -m.Kg, null, reason, m.ObservedAt),
            (t, who, command) => Done(t.Shop.Get<CorrectMetal>(), who, command),
            (nameof(FurnaceMetal.Kg), (_, n, c) => c with { Kg = 21 + n }));
    }

    private static IEnumerable<Field> OfDecisions()
    {
        static async Task<long> Start(Told t)
        {
            await t.Shop.Sample(await t.Shop.Heat(t.Heats[0]), await t.Shop.Treated(t.Ladles[0]), SampleKind.LastMetal, ("C", 3.4), ("Si", 2.4), ("Mg", 0.02));
            await t.Shop.Decide(t.Shop.Inspector, await t.Shop.Treated(t.Ladles[0]), CastingVerdict.Hold, null, "run-out");
            await using var db = t.Shop.Db();
            return await db.CastingDecisions.MaxAsync(d => d.Id);
        }

        static async Task<long?> LastMetal(Told t)
        {
            await using var db = t.Shop.Db();
            return await db.Samples.Where(s => s.TreatedLadleId == t.Ladles[0] && s.Kind == SampleKind.LastMetal).MaxAsync(s => (long?)s.Id);
        }

        return Of<CastingDecision, CorrectDecision.Command>(
            Start, (t, d, reason) => new(Guid.NewGuid(), t.Shop.Now, d.Id, d.Verdict, d.SampleId, reason),
            (t, who, command) => Done(t.Shop.Get<CorrectDecision>(), who, command),
            (nameof(CastingDecision.Verdict), (_, n, c) => c with { Verdict = n % 2 == 0 ? CastingVerdict.Scrap : CastingVerdict.Hold }),
            (nameof(CastingDecision.SampleId), (t, n, c) => c with { SampleId = n % 2 == 0 ? LastMetal(t).GetAwaiter().GetResult() : null }));
    }

    private static IEnumerable<Field> OfTestPieces()
    {
        static Task<long> Start(Told t) => Done(t.Shop.Get<RecordTestPiece>(), t.Shop.Inspector, new(
            Guid.NewGuid(), t.Shop.Now, t.Ladles[1], $"K {Guid.NewGuid():N}"[..8], TestPieceShape.KeelBlock, SampleType.CastSample, 25, "first batch"));
        return Of<TestPiece, CorrectTestPiece.Command>(
            Start, (t, p, reason) => new(Guid.NewGuid(), t.Shop.Now, p.Id, p.Label, p.Shape, p.SampleType, p.WallMm, p.TestUnit, false, reason) { Moulds = CastingUnits.Moulds(p.Moulds) },
            (t, who, command) => Done(t.Shop.Get<CorrectTestPiece>(), who, command),
            (nameof(TestPiece.Label), (_, n, c) => c with { Label = $"{c.Label}{n}" }),
            (nameof(TestPiece.Shape), (_, n, c) => c with { Shape = n % 2 == 0 ? TestPieceShape.YBlock : TestPieceShape.KeelBlock }),
            (nameof(TestPiece.SampleType), (_, n, c) => c with { SampleType = n % 2 == 0 ? SampleType.SeparatelyCast : SampleType.CastSample }),
            (nameof(TestPiece.WallMm), (_, n, c) => c with { WallMm = 30 + n }),
            (nameof(TestPiece.TestUnit), (_, n, c) => c with { TestUnit = $"batch {n}" }),
            (nameof(TestPiece.Moulds), (_, n, c) => c with { Moulds = n % 2 == 0 ? ["1"] : ["1", "2"] }));
    }

    private static IEnumerable<Field> Of<TFact, TCommand>(
        Func<Told, Task<long>> start, Func<Told, TFact, string, TCommand> same, Func<Told, Acting, TCommand, Task<long>> run,
        params (string Property, Func<Told, int, TCommand, TCommand> Change)[] fields)
        where TFact : Fact => fields.Select(field => new Field(
            typeof(TFact), field.Property, start,
            async (told, id, n, who, reason) =>
            {
                await using var db = told.Shop.Db();
                var fact = await db.Set<TFact>().AsNoTracking().SingleAsync(f => f.Id == id);
                return await run(told, who, field.Change(told, n, same(told, fact, reason)));
            },
            async (shop, first) =>
            {
                await using var db = shop.Db();
                IQueryable<TFact> facts = db.Set<TFact>().AsNoTracking();
                if (typeof(TFact) == typeof(Sample)) facts = (IQueryable<TFact>)((IQueryable<Sample>)facts).Include(s => s.Figures).Include(s => s.Burns).ThenInclude(b => b.Readings);
                var chain = new List<(Fact, string)>();
                for (var fact = await facts.SingleAsync(f => f.Id == first); fact is not null; fact = await facts.SingleOrDefaultAsync(f => f.SupersedesId == fact.Id))
                    chain.Add((fact, Records.Writing.RecordsJson.Text(Value(typeof(TFact).GetProperty(field.Property)!.GetValue(fact)))));
                return chain;
            }));

    /// <summary>Parts without their own row's numbers, which differ with every correction.</summary>
    private static object? Value(object? value) => value switch
    {
        List<Burn> burns => burns.SelectMany(b => b.Readings).Select(r => r.InstrumentText).ToList(),
        List<SampleFigure> figures => figures.ConvertAll(f => f.InstrumentText),
        _ => value,
    };

    private static async Task<long> LastLine(Told told, Func<Task<double>> write)
    {
        await write();
        await using var db = told.Shop.Db();
        return await db.FurnaceMetals.MaxAsync(m => m.Id);
    }

    private static async Task<TResult> Done<TCommand, TResult>(Operation<TCommand, TResult> operation, Acting who, TCommand command)
        where TCommand : Command
    {
        var outcome = await operation.Run(who, command, TestContext.Current.CancellationToken);
        Assert.True(outcome.Succeeded, $"{operation.GetType().Name}: {string.Join(", ", outcome.Findings)}");
        return outcome.Value;
    }

    private static Task<long> Furnace(Shop shop, string code) =>
        Done(shop.Get<AddFurnace>(), shop.Administrator, new(Guid.NewGuid(), shop.Now, code, $"Furnace {code}", 3000, 1800));

    private static Task<long> Instrument(Shop shop, string code) =>
        Done(shop.Get<AddInstrument>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, code, code, InstrumentKind.Spark, false, []));

    private static Task<long> OtherGrade(Shop shop) => Done(shop.Get<AddGrade>(), shop.Metallurgist, new(
        Guid.NewGuid(), shop.Now, "EN-GJS-400-15", Records.Grades.IronFamily.Ductile, "invented for a test", [new(WindowStage.Poured, "Si", 2.3, 2.5, 2.8)], null));
}
