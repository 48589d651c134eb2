using System.Globalization;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Writing;

/// <summary>An end of the trail that is kept elsewhere shows that nothing before it was rewritten.</summary>
public abstract class KeptHeadsTests(Database database) : IDisposable
{
    private readonly string file = Path.Combine(Directory.CreateTempSubdirectory("meltshop-heads-").FullName, "heads");

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Head_OfEachDay_IsAddedOnce()
    {
        var foundry = await Foundry.Found(database);
        var first = await Add("2026-03-01T06:00:00Z");
        await foundry.Heat();
        var late = await Add("2026-03-02T00:30:00+02:00"); // still the first of March in UTC
        var next = await Add("2026-03-02T00:30:00Z");

        Assert.Null(late);
        Assert.Equal([first!, next!], await KeptHeads.Read(file, Ct));
        Assert.Equal(first!.Entries + 1, next!.Entries);
        await using var db = database.Open();
        var head = await db.TrailHeads.AsNoTracking().SingleAsync(Ct);
        Assert.Equal((head.Number, head.Hash), (next.Entries, next.Hash));
    }

    [Fact]
    public async Task Head_OfATrailWithoutEntries_IsNotKept()
    {
        await Foundry.Found(database);
        await using var db = database.Open();
        var number = await db.TrailHeads.Select(h => h.Number).SingleAsync(Ct);

        await db.TrailHeads.ExecuteUpdateAsync(h => h.SetProperty(x => x.Number, 0), Ct);
        var kept = await Add("2026-03-01T06:00:00Z");
        await db.TrailHeads.ExecuteUpdateAsync(h => h.SetProperty(x => x.Number, number), Ct);

        Assert.Null(kept);
        Assert.False(File.Exists(file));
    }

    [Fact]
    public async Task Trail_AgainstKeptHeads_PassesThroughItsOwnOnly()
    {
        var foundry = await Foundry.Found(database);
        var kept = (await Add("2026-03-01T06:00:00Z"))!;
        await foundry.Heat();
        TrailMark own = new(kept.Entries, kept.Hash), other = new(kept.Entries, new string('a', 64)), early = new(kept.Entries - 1, kept.Hash);

        var report = await new TrailCheck(database.Contexts).Run([own, other, new(0, TrailHash.BeforeTheFirst), early], Ct);

        Assert.Equal([other.Hash, early.Hash], report.Faults.Select(f => f.Key));
        Assert.All(report.Faults, f => Assert.Equal("trail.mark", f.Code));
        Assert.False(report.Holds);
        Assert.True((await new TrailCheck(database.Contexts).Run([own], Ct)).Holds);
    }

    [Theory]
    [InlineData("nothing of the kind")]
    [InlineData("null")]
    [InlineData("""{"at":"2026-03-01T06:00:00+00:00","entries":3,"hash":"abc"}""")]
    public async Task Line_ThatIsNoHead_IsNamedByItsNumber(string line)
    {
        await Foundry.Found(database);
        await Add("2026-03-01T06:00:00Z");
        await File.AppendAllTextAsync(file, "\n" + line + "\n", Ct);

        var refusal = await Assert.ThrowsAsync<InvalidDataException>(() => KeptHeads.Read(file, Ct));

        Assert.Contains("heads, line 3:", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{"at":"2026-03-01T06:0""")]
    [InlineData("\0\0\0\0")]
    public async Task Head_AfterALineThatAPowerCutLeftHalfWritten_IsKeptInItsPlace(string half)
    {
        await Foundry.Found(database);
        var first = await Add("2026-03-01T06:00:00Z");
        await File.AppendAllTextAsync(file, half, Ct);

        Assert.Null(await Add("2026-03-01T07:00:00Z"));
        var next = await Add("2026-03-02T06:00:00Z");

        Assert.Equal([first!, next!], await KeptHeads.Read(file, Ct));
    }

    [Fact]
    public async Task Head_AfterALineWithoutItsEnd_BeginsALineOfItsOwn()
    {
        await Foundry.Found(database);
        var first = await Add("2026-03-01T06:00:00Z");
        await File.WriteAllTextAsync(file, (await File.ReadAllTextAsync(file, Ct)).TrimEnd(), Ct);

        var next = await Add("2026-03-02T06:00:00Z");

        Assert.Equal([first!, next!], await KeptHeads.Read(file, Ct));
    }

    public void Dispose()
    {
        Directory.Delete(Path.GetDirectoryName(file)!, recursive: true);
        GC.SuppressFinalize(this);
    }

    private Task<KeptHead?> Add(string at) => KeptHeads.AddDaily(file, database.Contexts, DateTimeOffset.Parse(at, CultureInfo.InvariantCulture), Ct);
}

public sealed class KeptHeadsTestsOnSqlite(SqliteDatabase database) : KeptHeadsTests(database), IClassFixture<SqliteDatabase>;

public sealed class KeptHeadsTestsOnPostgres(PostgresDatabase database) : KeptHeadsTests(database), IClassFixture<PostgresDatabase>;
