using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Heats;
using MeltShop.Records.Keeping;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Keeping;

/// <summary>Values come back as they went in, and sort and sum in the database.</summary>
public abstract class ValuesTests(Database database)
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Instant_FinerThanAMicrosecondWithOffset_IsKeptInUtcToTheMicrosecond()
    {
        var foundry = await Foundry.Found(database);
        var instant = new DateTimeOffset(2026, 3, 2, 8, 15, 30, TimeSpan.FromHours(2)).AddTicks(1_234_567);

        var heat = await foundry.Heat(startedAt: instant);

        await using var db = database.Open();
        var kept = await db.Heats.Where(h => h.Id == heat.Id).Select(h => h.StartedAt).SingleAsync(Ct);
        Assert.Equal(new DateTimeOffset(2026, 3, 2, 6, 15, 30, TimeSpan.Zero).AddTicks(1_234_560), kept);
        Assert.Equal(TimeSpan.Zero, kept.Offset);
    }

    [Fact]
    public async Task Instants_AcrossOffsets_SortAndCompareInTheDatabase()
    {
        var foundry = await Foundry.Found(database);
        var noon = new DateTimeOffset(2026, 6, 1, 12, 0, 0, TimeSpan.Zero);
        var later = await foundry.Heat(startedAt: noon.AddMicroseconds(1).ToOffset(TimeSpan.FromHours(-5)));
        var first = await foundry.Heat(startedAt: noon.AddMicroseconds(-1).ToOffset(TimeSpan.FromHours(9)));
        var middle = await foundry.Heat(startedAt: noon);

        await using var db = database.Open();
        var mine = db.Heats.Where(h => h.GradeId == foundry.Grade.Id);
        Assert.Equal([first.Id, middle.Id, later.Id], await mine.OrderBy(h => h.StartedAt).Select(h => h.Id).ToListAsync(Ct));
        Assert.Equal([later.Id], await mine.Where(h => h.StartedAt > noon).Select(h => h.Id).ToListAsync(Ct));
        Assert.Equal(noon.AddMicroseconds(1), await mine.MaxAsync(h => h.StartedAt, Ct));
    }

    [Fact]
    public async Task Money_InMinorUnits_SumsAndSortsExactly()
    {
        var foundry = await Foundry.Found(database);
        await foundry.Write("AddMaterial", (db, _) => db.Materials.AddRange(
            Priced(foundry, "a", 0.10m), Priced(foundry, "b", 0.20m), Priced(foundry, "c", -12.30m), Priced(foundry, "d", 10_000_000.01m)));

        await using var db = database.Open();
        var mine = db.Materials.Where(m => m.Code.StartsWith(foundry.Steel.Code + "-"));
        Assert.Equal([-12.30m, 0.10m, 0.20m, 10_000_000.01m], await mine.OrderBy(m => m.PricePerTonne).Select(m => m.PricePerTonne).ToListAsync(Ct));
        Assert.Equal(3, await mine.CountAsync(m => m.PricePerTonne <= 0.20m, Ct));
    }

    [Fact]
    public async Task Money_FinerThanAMinorUnit_IsRefusedAndNotRounded()
    {
        var foundry = await Foundry.Found(database);

        var refusal = await Assert.ThrowsAnyAsync<Exception>(() => foundry.Write("AddMaterial", (db, _) => db.Materials.Add(Priced(foundry, "x", 1.005m))));

        Assert.Contains("whole hundredths", refusal.ToString(), StringComparison.Ordinal);
        Assert.Equal(1.01m, Money.Rounded(1.005m));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public async Task Number_NotFinite_IsRefused(double kg)
    {
        var foundry = await Foundry.Found(database);

        await Assert.ThrowsAsync<InvalidOperationException>(() =>
            foundry.Write("WeighIn", (db, stamp) => db.FurnaceMetals.Add(stamp.Metal(foundry.Furnace.Id, FurnaceMetalKind.Charged, kg))));
    }

    [Theory]
    [InlineData(0.1 + 0.2)]
    [InlineData(5e-324)]
    [InlineData(-0.00049999999999999)]
    public async Task Number_OfAnyDigits_ComesBackBitForBit(double kg)
    {
        var foundry = await Foundry.Found(database);
        await foundry.Write("WeighIn", (db, stamp) => db.FurnaceMetals.Add(stamp.Metal(foundry.Furnace.Id, FurnaceMetalKind.Charged, kg)));

        await using var db = database.Open();
        var kept = await db.FurnaceMetals.Where(m => m.FurnaceId == foundry.Furnace.Id).Select(m => m.Kg).SingleAsync(Ct);
        Assert.Equal(BitConverter.DoubleToInt64Bits(kg), BitConverter.DoubleToInt64Bits(kept));
    }

    [Fact]
    public async Task WordsOfTheTrade_AreKeptAsText()
    {
        var story = await HeatStory.Tell(await Foundry.Found(database), HeatState.Closed);

        await using var db = database.Open();
        var state = await db.Database.SqlQuery<string>($"""SELECT "State" AS "Value" FROM "Heats" WHERE "Id" = {story.Heat.Id}""").ToListAsync(Ct);
        var element = await db.Database.SqlQuery<string>($"""SELECT "Element" AS "Value" FROM "SampleMeans" WHERE "SampleId" = {story.Bath.Id}""").ToListAsync(Ct);
        Assert.Equal(["Closed"], state);
        Assert.Equal([Element.C.Symbol], element);
    }

    private static Material Priced(Foundry foundry, string code, decimal price) => new()
    {
        Code = $"{foundry.Steel.Code}-{code}", Name = "Steel", Kind = MaterialKind.SteelScrap, Uses = MaterialUses.Charge, PricePerTonne = price,
        MetallicYieldPercent = 100,
    };
}

public sealed class ValuesTestsOnSqlite(SqliteDatabase database) : ValuesTests(database), IClassFixture<SqliteDatabase>;

public sealed class ValuesTestsOnPostgres(PostgresDatabase database) : ValuesTests(database), IClassFixture<PostgresDatabase>;
