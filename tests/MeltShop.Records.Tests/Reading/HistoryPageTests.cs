using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.History;
using MeltShop.Records.Tests.Databases;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Reading;

public abstract class HistoryPageTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task History_PageByPage_ShowsEachHeatOnceTheLatestFirst()
    {
        var foundry = await Foundry.Found(database);
        await Heats(foundry, 3 * HistoryPage.PageSize + 7, n => foundry.Site.Id + n / 3); // three start in the same microsecond

        var seen = new List<HistoryRow>();
        HistoryPlace? place = null;
        do
        {
            var page = await Page.Load(new(foundry.Grade.Id), place, Ct);
            seen.AddRange(page.Rows);
            place = page.Next;
        }
        while (place is not null);

        Assert.Equal(3 * HistoryPage.PageSize + 7, seen.Select(r => r.Id).Distinct().Count());
        Assert.Equal(seen.OrderByDescending(r => r.StartedAt).ThenByDescending(r => r.Id).Select(r => r.Id), seen.Select(r => r.Id));
    }

    [Fact]
    public async Task History_Filters_FindWhatTheyName()
    {
        var story = await HeatStory.Tell(await Foundry.Found(database), HeatState.Closed);
        var (heat, own) = (story.Heat, new HistoryFilter(story.Foundry.Grade.Id));

        Assert.Single(await Found(own with { FurnaceId = heat.FurnaceId, State = HeatState.Closed, Verdict = CastingVerdict.Hold }));
        Assert.Single(await Found(own with { Number = heat.Number[..^2].ToLowerInvariant() }));
        Assert.Single(await Found(own with { From = heat.StartedAt, Before = heat.StartedAt.AddMicroseconds(1) }));
        Assert.Empty(await Found(own with { State = HeatState.Cancelled }));
        Assert.Empty(await Found(own with { Verdict = CastingVerdict.Release }));
        Assert.Empty(await Found(own with { FurnaceId = -1 }));
        Assert.Empty(await Found(own with { Number = "no such" }));
        Assert.Empty(await Found(own with { Before = heat.StartedAt }));
    }

    [Fact]
    public async Task History_Verdict_IsTheLastOne()
    {
        var story = await HeatStory.Tell(await Foundry.Found(database), HeatState.Closed);
        await story.Foundry.Write("DecideCastings", (db, stamp) => db.CastingDecisions.Add(stamp.Decision(story.Ladle.Id, CastingVerdict.Release, story.LastMetal.Id)));

        Assert.Single(await Found(new(story.Foundry.Grade.Id, Verdict: CastingVerdict.Release)));
        Assert.Empty(await Found(new(story.Foundry.Grade.Id, Verdict: CastingVerdict.Hold)));
        Assert.Equal(1, Assert.Single(await Found(new(story.Foundry.Grade.Id))).Ladles[TreatedLadleState.Held]);
    }

    [Fact]
    public async Task History_Of200000_ReadsAnIndexAndNoMore()
    {
        var foundry = await Foundry.Found(database);
        await Fill(foundry, 200_000);
        var middle = new HistoryPlace(Start.AddMicroseconds(100_000), long.MaxValue);

        HistoryFilter[] filters =
        [
            new(), new(foundry.Grade.Id), new(FurnaceId: foundry.Furnace.Id), new(State: HeatState.Closed),
            new(From: Start, Before: Start.AddDays(1)), new(Number: "17"), new(foundry.Grade.Id, foundry.Furnace.Id, HeatState.Closed, Number: "17", From: Start),
        ];
        foreach (var filter in filters)
        {
            var plan = await PlanOf(filter, middle);

            Assert.Matches(BoundedByAnIndex, plan);
            Assert.DoesNotMatch(SortedOrScanned, plan);
            Assert.DoesNotContain("OFFSET", StatementOf(filter, middle), StringComparison.OrdinalIgnoreCase);
        }
    }

    protected static DateTimeOffset Start { get; } = new(2025, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>How the database would answer, in its own words.</summary>
    protected abstract Task<string> PlanOf(HistoryFilter filter, HistoryPlace after);

    /// <summary>What the plan says where the place bounds the index.</summary>
    protected abstract string BoundedByAnIndex { get; }

    /// <summary>What it says where rows are sorted, or all of them read.</summary>
    protected abstract string SortedOrScanned { get; }

    protected string StatementOf(HistoryFilter filter, HistoryPlace after)
    {
        using var db = database.Open();
        return HistoryQuery.Of(db, filter, after).Take(HistoryPage.PageSize + 1).ToQueryString();
    }

    private HistoryPage Page => new(database.Contexts);

    private async Task<IReadOnlyList<HistoryRow>> Found(HistoryFilter filter) => (await Page.Load(filter, null, Ct)).Rows;

    /// <summary>So many heats like one that was recorded, a microsecond apart, in one statement.</summary>
    private async Task Fill(Foundry foundry, int count)
    {
        var first = await foundry.Heat();
        await using var db = database.Open();
        var columns = db.Model.FindEntityType(typeof(Heat))!.GetProperties().Select(p => p.GetColumnName()).Where(c => c != "Id").ToList();
        var values = columns.Select(c => c switch { "Number" => $"'{foundry.Site.Code}-' || n.i", "StartedAt" => StartOf("n.i"), _ => $"h.\"{c}\"" });
        Assert.Equal(count, await db.Send($"""
            WITH RECURSIVE n(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i < {count - 1})
            INSERT INTO "Heats" ({string.Join(", ", columns.Select(c => $"\"{c}\""))})
            SELECT {string.Join(", ", values)} FROM n, "Heats" AS h WHERE h."Id" = {first.Id}
            """));
    }

    /// <summary>Start and so many microseconds, in the database's words.</summary>
    protected abstract string StartOf(string microseconds);

    private async Task Heats(Foundry foundry, int count, Func<int, long> microsecond)
    {
        var first = await foundry.Heat();
        await using var db = database.Open();
        db.Heats.AddRange(Enumerable.Range(0, count - 1).Select(n => new Heat
        {
            Number = $"{foundry.Site.Code}-{n}", SiteId = foundry.Site.Id, FurnaceId = foundry.Furnace.Id, GradeId = foundry.Grade.Id,
            PlanId = first.PlanId, State = HeatState.Closed, StartedAt = Start.AddMicroseconds(microsecond(n)), HeelKg = 0,
        }));
        await db.SaveChangesAsync(Ct);
    }
}

public sealed class HistoryPageTestsOnSqlite(SqliteDatabase database) : HistoryPageTests(database), IClassFixture<SqliteDatabase>
{
    protected override string StartOf(string microseconds) => $"{Start.UtcTicks} + {microseconds} * {TimeSpan.TicksPerMicrosecond}";

    protected override string BoundedByAnIndex => @"SEARCH h USING INDEX IX_Heats_\w+ \(.*StartedAt<\?\)";

    protected override string SortedOrScanned => "TEMP B-TREE|SCAN";

    protected override Task<string> PlanOf(HistoryFilter filter, HistoryPlace after) =>
        Plans.OfSqlite(database, StatementOf(filter, after));
}

public sealed class HistoryPageTestsOnPostgres(PostgresDatabase database) : HistoryPageTests(database), IClassFixture<PostgresDatabase>
{
    protected override string StartOf(string microseconds) => $"timestamptz '2025-01-01 00:00:00+00' + {microseconds} * interval '1 microsecond'";

    protected override string BoundedByAnIndex => @"Index Scan .*IX_Heats_\w+"".*\n.*Index Cond: .*""StartedAt"" <= ";

    protected override string SortedOrScanned => "Sort|Seq Scan";

    protected override Task<string> PlanOf(HistoryFilter filter, HistoryPlace after) =>
        Plans.OfPostgres(database, StatementOf(filter, after));
}
