using System.Text.RegularExpressions;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Route;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.History;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Reading;

public abstract class TrendPageTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Trend_PageByPage_ShowsEachHeatOnceAndWhole()
    {
        var foundry = await Foundry.Found(database);
        await Fill(foundry, 1300);

        var seen = new List<TrendPoint>();
        HistoryPlace? place = null;
        do
        {
            var page = await Page.Load(new(WindowQuantity.Of(Element.C), foundry.Grade.Id, foundry.Furnace.Id), place, Ct);
            Assert.True(page.Points.Count <= TrendPage.Most);
            Assert.Equal(page.Points.OrderBy(p => p.At).Select(p => p.SampleId), page.Points.Select(p => p.SampleId));
            seen.AddRange(page.Points);
            place = page.Next;
        }
        while (place is not null);

        Assert.Equal(1300, seen.Select(p => p.SampleId).Distinct().Count());
        Assert.Equal(1300, seen.Count);
    }

    [Fact]
    public async Task Trend_OfCarbon_LeavesOutGreyCoinsAndCorrectedOnes()
    {
        var story = await HeatStory.Tell(await Foundry.Found(database));
        var (foundry, heat) = (story.Foundry, story.Heat);
        var before = await Values(foundry, Element.C);
        await foundry.Write("More", (db, stamp) =>
        {
            db.Samples.Add(stamp.Coin(heat.Id, 3.21, isGrey: true));
            db.Samples.Add(stamp.Coin(heat.Id, 3.55, isGrey: false, supersedes: story.Bath.Id));
        });

        Assert.DoesNotContain(3.21, await Values(foundry, Element.C));
        Assert.Contains(3.55, await Values(foundry, Element.C));
        Assert.Equal(before.Count, (await Values(foundry, Element.C)).Count);
    }

    /// <summary>The heat's first coin was read by another instrument, as grey, and so is on neither chart: what follows is of a corrected bath.</summary>
    [Fact]
    public async Task Trend_OfOneInstrument_HasAsAHeatsFirstCoinOnlyWhatWasItsFirstOfAll()
    {
        var foundry = await Foundry.Found(database);
        var (before, after) = (await foundry.Heat(), await foundry.Heat());
        var (spark, combustion) = (Facts.Instrument($"{foundry.Grade.Code}-S"), new Instrument { Code = $"{foundry.Grade.Code}-C", Name = "Combustion", Kind = InstrumentKind.Combustion });
        await foundry.Write("Instruments", (db, _) => db.AddRange(spark, combustion));
        await foundry.Write("First", (db, stamp) => db.Add(Read(stamp, before.Id, combustion.Id, SampleKind.Bath, 3.40, isGrey: true)));
        await foundry.Write("More", (db, stamp) => db.AddRange(Read(stamp, before.Id, spark.Id, SampleKind.AfterCorrection, 3.60), Read(stamp, after.Id, spark.Id, SampleKind.Bath, 3.55)));

        var all = await Page.Load(new(WindowQuantity.Of(Element.C), foundry.Grade.Id), null, Ct);
        var ofOne = await Page.Load(new(WindowQuantity.Of(Element.C), foundry.Grade.Id, InstrumentId: spark.Id), null, Ct);

        Assert.Equal([(3.40, true), (3.55, true), (3.60, false)], all.Points.Select(p => (p.Value, p.IsFirst)).Order());
        Assert.Equal([(3.55, true), (3.60, false)], ofOne.Points.Select(p => (p.Value, p.IsFirst)).Order());
        Assert.Equal([3.40, 3.55], ofOne.Firsts.Select(f => f.Means[Element.C]!.Value).Order()); // combustion tells the carbon of a grey coin
        Assert.Contains(ofOne.Instruments, i => i.Id == combustion.Id);

        static Sample Read(Stamp stamp, long heat, long instrument, SampleKind kind, double carbon, bool isGrey = false) => new()
        {
            EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
            HeatId = heat, Kind = kind, InstrumentId = instrument, GreyFracture = isGrey, Means = [new() { Element = Element.C, Percent = carbon, Count = 1 }],
        };
    }

    /// <summary>C + (Si + P) / 3 = 3.60 + 2.13 / 3 = 4.31; the second coin has no phosphorus, of the third a spark does not tell the carbon.</summary>
    [Fact]
    public async Task Trend_OfACarbonEquivalent_IsOfTheCoinsThatMeasuredAllThatItNeeds()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat();
        await foundry.Write("Coins", (db, stamp) => db.AddRange(
            Read(stamp, heat.Id, false, (Element.C, 3.60), (Element.Si, 2.10), (Element.P, 0.03)),
            Read(stamp, heat.Id, false, (Element.C, 3.61), (Element.Si, 2.10)),
            Read(stamp, heat.Id, true, (Element.C, 3.62), (Element.Si, 2.10), (Element.P, 0.03))));

        var view = await Page.Load(new(WindowQuantity.Find("CE")!, foundry.Grade.Id), null, Ct);

        Assert.Equal(4.31, Assert.Single(view.Points).Value, 9);
        Assert.True(view.Points[0].IsFirst);
        Assert.Empty(view.TakenAsZero);
    }

    /// <summary>The first is treated, where the balance means nothing; of the second it is 0.4 − 1.7 · 0.08 = 0.264, and nobody measured the tin of its pearlite factor.</summary>
    [Fact]
    public async Task Trend_OfDerivedQuantities_LeavesOutIronThatTheyDoNotSpeakOfAndNamesWhatCountsAsZero()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat();
        await foundry.Write("Coins", (db, stamp) => db.AddRange(
            Read(stamp, heat.Id, false, (Element.Mn, 0.4), (Element.S, 0.08), (Element.Mg, 0.04)),
            Read(stamp, heat.Id, false, (Element.Mn, 0.4), (Element.S, 0.08), (Element.Si, 2), (Element.Cu, 0.1))));

        var balance = await Page.Load(new(WindowQuantity.Find("manganeseBalance")!, foundry.Grade.Id), null, Ct);
        var pearlite = await Page.Load(new(WindowQuantity.Find("pearliteFactor")!, foundry.Grade.Id), null, Ct);

        Assert.Equal(0.264, Assert.Single(balance.Points).Value, 9);
        Assert.Single(pearlite.Points);
        Assert.Contains(Element.Sn, pearlite.TakenAsZero);
    }

    private static Sample Read(Stamp stamp, long heat, bool isGrey, params (Element Element, double Percent)[] means) => new()
    {
        EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt,
        HeatId = heat, Kind = SampleKind.Bath, GreyFracture = isGrey, Means = [.. means.Select(m => new SampleMean { Element = m.Element, Percent = m.Percent, Count = 1 })],
    };

    /// <summary>A chosen instrument that read nothing of the element stays among those that can be chosen.</summary>
    [Fact]
    public async Task Trend_OfAnInstrumentThatReadNoneOfIt_StillOffersIt()
    {
        var story = await HeatStory.Tell(await Foundry.Found(database));
        var idle = Facts.Instrument($"{story.Foundry.Grade.Code}-I");
        await story.Foundry.Write("Instrument", (db, _) => db.Add(idle));

        var view = await Page.Load(new(WindowQuantity.Of(Element.C), story.Foundry.Grade.Id, InstrumentId: idle.Id), null, Ct);

        Assert.Empty(view.Points);
        Assert.Equal([TrendFilter.NoInstrument, idle.Id], view.Instruments.Select(i => i.Id).Order());
        Assert.Equal([Element.Mg], Assert.Single(view.Firsts).Unseen);
    }

    /// <summary>Treated iron: the first coin of its ladle.</summary>
    [Fact]
    public async Task Trend_OfTreatedIron_HasTheFirstCoinOfEachLadle()
    {
        var story = await HeatStory.Tell(await Foundry.Found(database));
        var instrument = new Instrument { Code = $"{story.Foundry.Grade.Code}-C", Name = "Combustion", Kind = InstrumentKind.Combustion };
        await story.Foundry.Write("Instrument", (db, _) => db.Add(instrument));
        await story.Foundry.Write("Later", (db, stamp) => db.Add(new Sample
        {
            EntryKey = stamp.EntryKey, PersonId = stamp.PersonId, ObservedAt = stamp.ObservedAt, EnteredAt = stamp.EnteredAt, HeatId = story.Heat.Id,
            TreatedLadleId = story.Ladle.Id, Kind = SampleKind.LastMetal, InstrumentId = instrument.Id, Means = [new() { Element = Element.C, Percent = 3.44, Count = 1 }],
        }));

        var view = await Page.Load(new(WindowQuantity.Of(Element.C), story.Foundry.Grade.Id, Treated: true), null, Ct);

        Assert.Equal((3.44, false), (Assert.Single(view.Points).Value, view.Points[0].IsFirst)); // the first was of a spark
    }

    [Fact]
    public async Task Trend_Of40000_ReadsAnIndexOfTheHeatsAndNoMore()
    {
        var foundry = await Foundry.Found(database);
        await Fill(foundry, 40_000);

        // The heats are looked up by the history's own query, whose plan is checked there.
        foreach (var filter in new TrendFilter[] { new(WindowQuantity.Of(Element.Si)), new(WindowQuantity.Of(Element.C)), new(WindowQuantity.Of(Element.Mg), Treated: true) })
        {
            var plan = await PlanOf(filter);

            Assert.Matches(BoundedByAnIndex, plan);
            Assert.DoesNotMatch(Scanned, plan);
        }
    }

    protected static DateTimeOffset Start { get; } = new(2025, 1, 1, 0, 0, 0, TimeSpan.Zero);

    protected abstract Task<string> PlanOf(TrendFilter filter);

    protected abstract string BoundedByAnIndex { get; }

    protected abstract string Scanned { get; }

    /// <summary>Start and so many microseconds, in the database's words.</summary>
    protected abstract string StartOf(string microseconds);

    protected string StatementOf(TrendFilter filter)
    {
        using var db = database.Open();
        return TrendQuery.Of(db, filter, [.. db.Heats.OrderByDescending(h => h.StartedAt).Take(5).Select(h => h.Id)]).ToQueryString();
    }

    private TrendPage Page => new(database.Contexts);

    private async Task<IReadOnlyList<double>> Values(Foundry foundry, Element element) =>
        [.. (await Page.Load(new(WindowQuantity.Of(element), foundry.Grade.Id), null, Ct)).Points.Select(p => p.Value)];

    /// <summary>So many heats like one that was recorded, a microsecond apart, each with a coin like one that was recorded: three statements.</summary>
    private async Task Fill(Foundry foundry, int count)
    {
        var first = await foundry.Heat();
        Sample coin = null!;
        await foundry.Write("Coin", (db, stamp) => db.Samples.Add(coin = stamp.Coin(first.Id, 3.6, isGrey: false)));
        await using var db = database.Open();
        var number = (string i) => $"'{foundry.Site.Code}-' || {i}";
        await Copy<Heat>(db, first.Id, count - 1, c => c switch { "Number" => number("n.i"), "StartedAt" => StartOf("n.i"), _ => null });
        await Copy<Sample>(db, coin.Id, count - 1, c => c switch
        {
            "HeatId" => $"""(SELECT h."Id" FROM "Heats" AS h WHERE h."Number" = {number("n.i")})""", "ObservedAt" => StartOf("n.i"), _ => null,
        });
        Assert.True(await db.Send($"""
            INSERT INTO "SampleMeans" ("SampleId", "Element", "Percent", "Count")
            SELECT s."Id", m."Element", m."Percent", m."Count" FROM "Samples" AS s, "SampleMeans" AS m
            WHERE m."SampleId" = {coin.Id} AND s."Id" > {coin.Id} AND s."EntryKey" = (SELECT x."EntryKey" FROM "Samples" AS x WHERE x."Id" = {coin.Id})
            """) >= count - 1);
    }

    private static async Task Copy<TRow>(RecordsContext db, long id, int count, Func<string, string?> value)
    {
        var type = db.Model.FindEntityType(typeof(TRow))!;
        var columns = type.GetProperties().Select(p => p.GetColumnName()).Where(c => c != "Id").ToList();
        Assert.Equal(count, await db.Send($"""
            WITH RECURSIVE n(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i < {count - 1})
            INSERT INTO "{type.GetTableName()}" ({string.Join(", ", columns.Select(c => $"\"{c}\""))})
            SELECT {string.Join(", ", columns.Select(c => value(c) ?? $"r.\"{c}\""))} FROM n, "{type.GetTableName()}" AS r WHERE r."Id" = {id}
            """));
    }
}

public sealed class TrendPageTestsOnSqlite(SqliteDatabase database) : TrendPageTests(database), IClassFixture<SqliteDatabase>
{
    protected override string StartOf(string microseconds) => $"{Start.UtcTicks} + {microseconds} * {TimeSpan.TicksPerMicrosecond}";

    protected override string BoundedByAnIndex => @"SEARCH s USING INDEX IX_Samples_HeatId \(HeatId=\?\)";

    /// <summary>The list of heats itself is read whole.</summary>
    protected override string Scanned => @"SCAN (?!h)";

    protected override Task<string> PlanOf(TrendFilter filter) => Plans.OfSqlite(database, StatementOf(filter));
}

public sealed class TrendPageTestsOnPostgres(PostgresDatabase database) : TrendPageTests(database), IClassFixture<PostgresDatabase>
{
    protected override string StartOf(string microseconds) => $"timestamptz '2025-01-01 00:00:00+00' + {microseconds} * interval '1 microsecond'";

    protected override string BoundedByAnIndex => @"Index Scan (using|on) ""?IX_Samples_HeatId""?";

    /// <summary>The instruments are few, and may be read whole.</summary>
    protected override string Scanned => @"Seq Scan on ""(Heats|Samples|SampleMeans)""";

    // EF prints a list as -- @name={ '1', '2' }, which PostgreSQL reads in another form.
    protected override async Task<string> PlanOf(TrendFilter filter)
    {
        var statement = StatementOf(filter);
        var list = Regex.Match(statement, @"^-- (@\w+)=\{ (.*) \}.*$", RegexOptions.Multiline);
        statement = statement.Replace(list.Value, "", StringComparison.Ordinal).Replace(list.Groups[1].Value, $"ARRAY[{list.Groups[2].Value}]::bigint[]", StringComparison.Ordinal);
        return await Plans.OfPostgres(database, statement);
    }
}
