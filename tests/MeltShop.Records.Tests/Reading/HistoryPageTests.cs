using System.Text.RegularExpressions;
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
            new(From: Start, Before: Start.AddDays(1)), new(Verdict: CastingVerdict.Release), new(foundry.Grade.Id, foundry.Furnace.Id, HeatState.Closed, From: Start),
        ];
        foreach (var filter in filters)
        {
            var plan = await PlanOf(filter, middle);

            Assert.Matches(BoundedByAnIndex, plan);
            Assert.DoesNotMatch(SortedOrScanned, plan);
            Assert.DoesNotContain("OFFSET", await StatementOf(filter, middle), StringComparison.OrdinalIgnoreCase);
        }

        // What is rare is looked up and then sorted: it is few.
        (HistoryFilter Filter, string Index)[] looked =
        [
            (new(Verdict: CastingVerdict.Hold), "IX_CastingDecisions_Verdict"), (new(Verdict: CastingVerdict.Scrap, FurnaceId: foundry.Furnace.Id), "IX_CastingDecisions_Verdict"),
        ];
        foreach (var (filter, index) in looked)
        {
            var plan = await PlanOf(filter, middle);

            Assert.Contains(index, plan, StringComparison.Ordinal);
            Assert.DoesNotMatch(Scanned, plan);
            Assert.DoesNotContain("OFFSET", await StatementOf(filter, middle), StringComparison.OrdinalIgnoreCase);
        }

        // Of each beginning of a number the index gives a page and no more, whether one heat begins so or all of them; what is sorted is those pages.
        await using (var db = database.Open())
        {
            middle = new(Start, await db.Heats.Where(h => h.GradeId == foundry.Grade.Id && h.Number.EndsWith("-170412")).Select(h => h.Id).SingleAsync(Ct));
        }

        string[] words = ["1", "17", "170412", "2026", foundry.Site.Code.ToLowerInvariant() + "-2026", foundry.Site.Code.ToLowerInvariant() + "-2026-17"];
        foreach (var filter in words.SelectMany(w => new HistoryFilter[] { new(Number: w), new(foundry.Grade.Id, State: HeatState.Closed, Number: w, From: Start) }))
        {
            await using var db = database.Open();
            var ranges = (await NumberSearch.Beginnings(db, filter.Number!, Ct)).Count;
            var (plan, statement) = (await PlanOf(filter, middle), await StatementOf(filter, middle));

            Assert.Equal((ranges, ranges), (Regex.Count(plan, RangeOfNumbers), Regex.Count(statement, @"LIMIT") - 1));
            // The pages are put together in their order; of the table itself nothing is read but those ranges.
            Assert.DoesNotContain("Seq Scan", plan, StringComparison.Ordinal);
            Assert.All(Regex.Matches(plan, @"SCAN (\w+)"), scan => Assert.DoesNotContain($"\"Heats\" AS \"{scan.Groups[1].Value}\"", statement, StringComparison.Ordinal));
            Assert.DoesNotContain("OFFSET", statement, StringComparison.OrdinalIgnoreCase);
        }

        Assert.Equal(1 + 10 + 100 + 1000, await Paged(new(foundry.Grade.Id, Number: "171"))); // 171, 1710 to 1719, and so on to 171,999
        Assert.Equal(2000, await Count(new(foundry.Grade.Id, Verdict: CastingVerdict.Hold)));
    }

    [Fact]
    public async Task History_Number_IsFoundByItsBeginningWithAndWithoutSiteAndYear()
    {
        var foundry = await Foundry.Found(database);
        for (var n = 0; n < 12; n++) await foundry.Heat();
        var site = foundry.Site.Code;
        var year = (await foundry.Heat()).Number.Split('-')[1];
        async Task<string[]> Of(string words) => [.. (await Found(new(foundry.Grade.Id, Number: words))).Select(r => r.Number).Order(StringComparer.Ordinal)];

        Assert.Equal([$"{site}-{year}-0012"], await Of("0012"));
        Assert.Equal([$"{site}-{year}-0012"], await Of("12"));
        Assert.Equal([$"{site}-{year}-0012"], await Of($" {year}-0012 "));
        Assert.Equal([$"{site}-{year}-0012"], await Of($"{site}-{year}-0012".ToLowerInvariant()));
        Assert.Equal([$"{site}-{year}-0001", $"{site}-{year}-0010", $"{site}-{year}-0011", $"{site}-{year}-0012", $"{site}-{year}-0013"], await Of("001"));
        Assert.Equal(13, (await Of($"{site}-")).Length);
        Assert.Equal(13, (await Of(year)).Length);
        Assert.Empty(await Of("0099"));
        Assert.Empty(await Of("-0012"));
        Assert.Empty(await Of("\0%_'"));
    }

    protected static DateTimeOffset Start { get; } = new(2025, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>How the database would answer, in its own words.</summary>
    protected abstract Task<string> PlanOf(HistoryFilter filter, HistoryPlace after);

    /// <summary>What the plan says where the place bounds the index.</summary>
    protected abstract string BoundedByAnIndex { get; }

    /// <summary>What it says where rows are sorted, or all of them read.</summary>
    protected abstract string SortedOrScanned { get; }

    /// <summary>What it says where it reads a page of a range of numbers in their order.</summary>
    protected abstract string RangeOfNumbers { get; }

    /// <summary>What it says where all rows of a table are read.</summary>
    protected abstract string Scanned { get; }

    protected async Task<string> StatementOf(HistoryFilter filter, HistoryPlace after)
    {
        await using var db = database.Open();
        return (await HistoryQuery.Of(db, filter, after, Ct)).Take(HistoryPage.PageSize + 1).ToQueryString();
    }

    private async Task<int> Count(HistoryFilter filter)
    {
        await using var db = database.Open();
        return await (await HistoryQuery.Of(db, filter, null, Ct)).CountAsync(Ct);
    }

    /// <summary>All pages, one after the other: how many heats they show, each once and the greatest number first.</summary>
    private async Task<int> Paged(HistoryFilter filter)
    {
        var (numbers, place) = (new List<string>(), (HistoryPlace?)null);
        do
        {
            var page = await Page.Load(filter, place, Ct);
            numbers.AddRange(page.Rows.Select(r => r.Number));
            place = page.Next;
        }
        while (place is not null);

        Assert.Equal(numbers.Distinct().OrderDescending(StringComparer.Ordinal), numbers);
        return numbers.Count;
    }

    private HistoryPage Page => new(database.Contexts);

    private async Task<IReadOnlyList<HistoryRow>> Found(HistoryFilter filter) => (await Page.Load(filter, null, Ct)).Rows;

    /// <summary>So many heats like one that was recorded, a microsecond apart, in one statement.</summary>
    private async Task Fill(Foundry foundry, int count)
    {
        var first = await foundry.Heat();
        await using var db = database.Open();
        await Multiply(db, typeof(Heat), first.Id, count, c => c switch { "Number" => $"'{first.Number[..^4]}' || n.i", "StartedAt" => StartOf("n.i"), _ => null });
        var heat = await db.Heats.Where(h => h.GradeId == foundry.Grade.Id && h.Id > first.Id).MinAsync(h => h.Id, Ct);
        TreatedLadle ladle = new() { HeatId = first.Id, LadleId = foundry.Ladle.Id, Ordinal = 1, State = TreatedLadleState.Released };
        await foundry.Write("TapLadle", (write, _) => write.Add(ladle));
        await Multiply(db, typeof(TreatedLadle), ladle.Id, count, c => c == "HeatId" ? $"{heat} + n.i" : null);
        CastingDecision decision = null!;
        await foundry.Write("DecideCastings", (write, stamp) => write.Add(decision = stamp.Decision(ladle.Id, CastingVerdict.Release, null)));
        // Of a hundred one is held, and of a thousand one was scrapped.
        await Multiply(db, typeof(CastingDecision), decision.Id, count, c => c switch
        {
            "TreatedLadleId" => $"{ladle.Id} + 1 + n.i",
            "Verdict" => "CASE WHEN n.i % 1000 = 1 THEN 'Scrap' WHEN n.i % 100 = 0 THEN 'Hold' ELSE 'Release' END",
            _ => null,
        });
        await db.Send("ANALYZE");
    }

    /// <summary>So many rows like one of a table, with values of their own for some columns, in one statement.</summary>
    private static async Task Multiply(RecordsContext db, Type type, long id, int count, Func<string, string?> own)
    {
        var entity = db.Model.FindEntityType(type)!;
        var columns = entity.GetProperties().Select(p => p.GetColumnName()).Where(c => c != "Id").ToList();
        db.Database.SetCommandTimeout(300); // on a machine that does other things beside
        Assert.Equal(count, await db.Send($"""
            WITH RECURSIVE n(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i < {count - 1})
            INSERT INTO "{entity.GetTableName()}" ({string.Join(", ", columns.Select(c => $"\"{c}\""))})
            SELECT {string.Join(", ", columns.Select(c => own(c) ?? $"h.\"{c}\""))} FROM n, "{entity.GetTableName()}" AS h WHERE h."Id" = {id}
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

    // What is read of it goes on as it is, without a sort before the end of the page.
    protected override string RangeOfNumbers => @"SEARCH h\d* USING INDEX IX_Heats_Number \(Number>\? AND Number<\?\)\r?\nSCAN";

    protected override string Scanned => "SCAN";

    protected override async Task<string> PlanOf(HistoryFilter filter, HistoryPlace after) => await Plans.OfSqlite(database, await StatementOf(filter, after));
}

public sealed class HistoryPageTestsOnPostgres(PostgresDatabase database) : HistoryPageTests(database), IClassFixture<PostgresDatabase>
{
    protected override string StartOf(string microseconds) => $"timestamptz '2025-01-01 00:00:00+00' + {microseconds} * interval '1 microsecond'";

    protected override string BoundedByAnIndex => @"Index Scan .*IX_Heats_\w+"".*\n.*Index Cond: .*""StartedAt"" <= ";

    protected override string SortedOrScanned => "Sort|Seq Scan";

    protected override string RangeOfNumbers => @"Limit .*\n *->  Index Scan Backward using ""IX_Heats_Number""";

    protected override string Scanned => "Seq Scan";

    protected override async Task<string> PlanOf(HistoryFilter filter, HistoryPlace after) => await Plans.OfPostgres(database, await StatementOf(filter, after), isAnalyzed: true);
}
