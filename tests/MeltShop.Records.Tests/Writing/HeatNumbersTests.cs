using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Writing;

public abstract class HeatNumbersTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task HeatNumber_SixteenStartersAtOnce_NoGapAndNoDouble()
    {
        var foundry = await Foundry.Found(database);

        await Task.WhenAll(Enumerable.Range(0, 16).Select(_ => Task.Run(async () =>
        {
            for (var n = 0; n < 4; n++) await foundry.Heat();
        }, Ct)));

        await using var db = database.Open();
        var numbers = await db.Heats.Where(h => h.SiteId == foundry.Site.Id).Select(h => h.Number).ToListAsync(Ct);
        Assert.Equal(Enumerable.Range(1, 64).Select(n => $"{foundry.Site.Code}-2026-{n:0000}"), numbers.Order(StringComparer.Ordinal));
        Assert.Empty((await new TrailCheck(database.Contexts).Run(Ct)).Faults);
    }

    [Fact]
    public async Task HeatNumber_OfAStartThatWasRefused_IsGivenAgain()
    {
        var foundry = await Foundry.Found(database);
        await database.Recorder.Record(foundry.Entry("StartHeat"), async (db, stamp, ct) =>
        {
            await HeatNumbers.Next(db, foundry.Site, stamp.ObservedAt, ct);
            return Written<int>.Refused(new Metallurgy.Finding("", "state.wrong"));
        }, Ct);

        Assert.Equal($"{foundry.Site.Code}-2026-0001", (await foundry.Heat()).Number);
    }

    [Fact]
    public async Task HeatNumber_InTheNight_TakesTheYearOfTheSite()
    {
        var foundry = await Foundry.Found(database); // in Berlin: an hour before UTC in winter
        var numbers = new List<string>();
        await database.Recorder.Record(foundry.Entry("StartHeat"), async (db, _, ct) =>
        {
            foreach (var instant in new[] { "2026-12-31T22:59:59Z", "2026-12-31T23:00:00Z" })
                numbers.Add(await HeatNumbers.Next(db, foundry.Site, DateTimeOffset.Parse(instant, System.Globalization.CultureInfo.InvariantCulture), ct));
            return Written<int>.Refused(new Metallurgy.Finding("", "only.looked")); // a number without a heat would be a gap
        }, Ct);

        Assert.Equal([$"{foundry.Site.Code}-2026-0001", $"{foundry.Site.Code}-2027-0001"], numbers);
    }

    [Fact]
    public async Task HeatNumber_OutsideATransaction_IsRefused()
    {
        var foundry = await Foundry.Found(database);
        await using var db = database.Open();

        await Assert.ThrowsAsync<InvalidOperationException>(() => HeatNumbers.Next(db, foundry.Site, foundry.Database.Clock.GetUtcNow(), Ct));
    }
}

public sealed class HeatNumbersTestsOnSqlite(SqliteDatabase database) : HeatNumbersTests(database), IClassFixture<SqliteDatabase>;

public sealed class HeatNumbersTestsOnPostgres(PostgresDatabase database) : HeatNumbersTests(database), IClassFixture<PostgresDatabase>;
