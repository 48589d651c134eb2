using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Floor;
using MeltShop.Records.Tests.Databases;

namespace MeltShop.Records.Tests.Reading;

public abstract class WaitingRowTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Waiting_ChargingHeat_WaitsForItsCharge()
    {
        var heat = await (await Foundry.Found(database)).Heat(HeatState.Charging);

        Assert.Equal((WaitingFor.Charging, heat.StartedAt), (await Of(heat)).Select(row => (row.For, row.Since)).Single());
    }

    [Fact]
    public async Task Waiting_Bath_WaitsForASampleUntilThereIsOneAndAgainAfterAnAddition()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat(HeatState.Bath);
        Assert.Equal(WaitingFor.BathSample, (await Of(heat)).Single().For);

        await foundry.Write("RecordSample", (db, stamp) => db.Samples.Add(stamp.Sample(heat.Id, null, SampleKind.Bath, 3.6)));
        Assert.Empty(await Of(heat));

        await foundry.Write("WeighIn", (db, stamp) => db.Weighings.Add(stamp.Weighing(heat.Id, foundry.Steel.Id, 12, intoBath: true)));
        Assert.Equal(WaitingFor.BathSample, (await Of(heat)).Single().For);
    }

    [Fact]
    public async Task Waiting_Ladle_GoesFromTapOverReactionAndSampleToTheDecision()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat(HeatState.Tapping);
        TreatedLadle ladle = null!;
        await foundry.Write("PreparePocket", (db, _) =>
            db.TreatedLadles.Add(ladle = new() { HeatId = heat.Id, LadleId = foundry.Ladle.Id, Ordinal = 1, State = TreatedLadleState.Prepared }));
        Assert.Equal((WaitingFor.Tap, ladle.Id), (await Of(heat)).Select(row => (row.For, row.TreatedLadleId!.Value)).Single());

        Assert.Equal(WaitingFor.ReactionEnd, await Then(TreatedLadleState.Tapped));
        Assert.Equal(WaitingFor.LastMetal, await Then(TreatedLadleState.Pouring));
        await foundry.Write("RecordSample", (db, stamp) => db.Samples.Add(stamp.Sample(heat.Id, ladle.Id, SampleKind.LastMetal, 3.5)));
        Assert.Equal(WaitingFor.Decision, (await Of(heat)).Single().For);
        Assert.Equal(WaitingFor.Decision, await Then(TreatedLadleState.Held));
        Assert.Null(await Then(TreatedLadleState.Released));

        async Task<WaitingFor?> Then(TreatedLadleState state)
        {
            await foundry.Write("Step", (db, _) => db.TreatedLadles.Single(l => l.Id == ladle.Id).State = state);
            return (await Of(heat)).SingleOrDefault()?.For;
        }
    }

    [Fact]
    public async Task Waiting_LadleOverItsTime_WaitsForItsRestWhileThereMustBeIronInIt()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat(HeatState.Tapping);
        TreatedLadle ladle = null!;
        await foundry.Write("PreparePocket", (db, _) =>
            db.TreatedLadles.Add(ladle = new() { HeatId = heat.Id, LadleId = foundry.Ladle.Id, Ordinal = 1, State = TreatedLadleState.Pouring }));
        await foundry.Write("RecordTap", (db, stamp) => db.Taps.Add(stamp.Tap(ladle.Id, heat.Id, 1000)));
        var over = heat.StartedAt.AddMinutes(40);

        Assert.DoesNotContain(WaitingFor.Rest, (await Of(heat)).Select(row => row.For));
        Assert.Equal((ladle.Id, over), (await Of(heat, _ => over)).Where(row => row.For == WaitingFor.Rest).Select(row => (row.TreatedLadleId!.Value, row.Since)).Single());

        await foundry.Write("RecordRest", (db, stamp) => db.LadleRests.Add(new()
        {
            EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt, TreatedLadleId = ladle.Id, Kg = 960,
        })); // 40 kg by the scales, which are no better than 50
        Assert.DoesNotContain(WaitingFor.Rest, (await Of(heat, _ => over)).Select(row => row.For));
    }

    [Fact]
    public async Task Waiting_ClosedHeat_WaitsForNothing() => Assert.Empty(await Of(await (await Foundry.Found(database)).Heat(HeatState.Closed)));

    private async Task<IEnumerable<WaitingRow>> Of(Heat heat, Func<FloorLadle, DateTimeOffset?>? overSince = null) => WaitingRow.Of(await new FloorPage(database.Contexts).Load(Ct), overSince ?? (_ => null)).Where(row => row.HeatId == heat.Id);
}

public sealed class WaitingRowTestsOnSqlite(SqliteDatabase database) : WaitingRowTests(database), IClassFixture<SqliteDatabase>;

public sealed class WaitingRowTestsOnPostgres(PostgresDatabase database) : WaitingRowTests(database), IClassFixture<PostgresDatabase>;
