using System.IO.Compression;
using MeltShop.Records.Backups;
using MeltShop.Records.Databases;
using MeltShop.Records.Exchange.Archives;
using MeltShop.Records.Heats;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Exchange;

/// <summary>An archive of either database goes into an empty one of either kind, whole or not at all.</summary>
public abstract class ArchiveTests(Database database) : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("meltshop-archive-");

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    private ArchiveWriter Writer => new(database.Contexts, database.Clock);

    private string File => Path.Combine(folder.FullName, "shop.zip");

    public void Dispose()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        folder.Delete(recursive: true);
    }

    [Fact]
    public async Task Backup_RestoredIntoEitherDatabase_HoldsTheSameRowsAndTrailAndGoesOn()
    {
        await HeatStory.Tell(await Foundry.Found(database), HeatState.Closed);
        await Secret();
        var written = await Writer.Backup(File, Ct);
        Assert.Equal(BackupState.Done, written.State);

        foreach (var target in await EmptyDatabases.Both(folder.FullName))
        {
            var restored = await new ArchiveReader(target).Read(File, Ct);

            Assert.True(restored.State == BackupState.Done, $"{target.Provider}: {restored}");
            Assert.Equal((written.Trail!.HeadHash, written.Trail.Rows), (restored.Trail!.HeadHash, restored.Trail.Rows));
            Assert.Equal(await RowCounts.Of(database.Contexts), await RowCounts.Of(new ContextFactory(target)));
            await EmptyDatabases.GoesOn(target);
            Assert.Equal(BackupState.Occupied, (await new ArchiveReader(target).Read(File, Ct)).State);
        }
    }

    [Fact]
    public async Task Export_IntoAnEmptyInstallation_BringsAllButWhatLetsSomebodyIn()
    {
        await HeatStory.Tell(await Foundry.Found(database), HeatState.Closed);
        await Secret();

        Assert.Equal(BackupState.Done, (await Writer.Export(File, Ct)).State);
        var target = (await EmptyDatabases.Both(folder.FullName))[0];
        Assert.Equal(BackupState.Done, (await new ArchiveReader(target).Read(File, Ct)).State);

        var (before, after) = (await RowCounts.Of(database.Contexts), await RowCounts.Of(new ContextFactory(target)));
        Assert.Equal(before.Where(t => t.Value != after[t.Key]).Select(t => t.Key), ["ApiKeys", "DataProtectionKeys"]);
        await using var zip = await ZipFile.OpenReadAsync(File, Ct);
        foreach (var entry in zip.Entries)
        {
            using var text = new StreamReader(await entry.OpenAsync(Ct));
            Assert.DoesNotContain("unguessable", await text.ReadToEndAsync(Ct), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Sheet_WithARemarkThatLooksLikeAFormula_HoldsItAsText()
    {
        var foundry = await Foundry.Found(database);
        await foundry.Write("Price", (db, stamp) => db.Prices.Add(stamp.Price(foundry.Steel.Id, -0.01m)));
        await foundry.Write("Name", (db, _) => db.Grades.Add(new() { Code = $"=cmd|' /C calc'!A{foundry.Grade.Id}", Family = Grades.IronFamily.Grey, Source = "a, \"b\"\n+c" }));

        await Writer.Export(File, Ct);

        Assert.Contains($",'=cmd|' /C calc'!A{foundry.Grade.Id},", await Text("sheets/Grades.csv"), StringComparison.Ordinal);
        Assert.Contains("\"a, \"\"b\"\"\n+c\"", await Text("sheets/Grades.csv"), StringComparison.Ordinal);
        Assert.Contains(",-1,", await Text("sheets/Prices.csv"), StringComparison.Ordinal); // a number stays one
        Assert.DoesNotContain("'=cmd", await Text("records/Grades.jsonl"), StringComparison.Ordinal); // what is read again is as it was
    }

    [Fact]
    public async Task Archive_ThatWasChanged_IsRefusedAndLeavesTheDatabaseEmpty()
    {
        await HeatStory.Tell(await Foundry.Found(database), HeatState.Closed);
        foreach (var target in await EmptyDatabases.Both(folder.FullName))
        {
            foreach (var (from, to, state) in new[]
            {
                ("\"MetallicYieldPercent\":97", "\"MetallicYieldPercent\":99", BackupState.Broken),
                ("\"MetallicYieldPercent\":97", "\"MetallicYieldPercent\":\"much\"", BackupState.Foreign),
            })
            {
                System.IO.File.Delete(File);
                System.IO.File.Delete(BackupHead.FileOf(File));
                await Writer.Backup(File, Ct);
                await Change("records/Materials.jsonl", from, to);

                var outcome = await new ArchiveReader(target).Read(File, Ct);

                Assert.Equal(state, outcome.State);
                Assert.Equal(0, (await RowCounts.Of(new ContextFactory(target))).Where(t => t.Key != "TrailHeads").Sum(t => t.Value));
            }
        }
    }

    [Fact]
    public async Task Archive_ThatIsNoneOrEndsElsewhere_IsRefused()
    {
        await Foundry.Found(database);
        await Writer.Backup(File, Ct);
        await new BackupHead(1, new('a', 64)).Write(File, Ct);
        var letter = Path.Combine(folder.FullName, "letter.txt");
        await System.IO.File.WriteAllTextAsync(letter, "Dear shop", Ct);
        var target = (await EmptyDatabases.Both(folder.FullName))[0];

        Assert.Equal(BackupState.Broken, (await new ArchiveReader(target).Read(File, Ct)).State);
        Assert.Equal(BackupState.Foreign, (await new ArchiveReader(target).Read(letter, Ct)).State);
        Assert.Equal(BackupState.Missing, (await new ArchiveReader(target).Read(letter + "x", Ct)).State);
        Assert.Equal(BackupState.Occupied, (await Writer.Backup(File, Ct)).State);
    }

    /// <summary>Texts that the guard and the quotation of a sheet have to give back letter by letter.</summary>
    private static readonly string[] Odd =
        ["", "'", "''=1", "=1+1", "+49", "-5", "@a", "\tb", "\rc", " d ", "\"e\"", "f,g", "h\ni", "j\r\nk", "\r\n", "3.50", "True", "null", "'quoted'", "µ ½ – 铁"];

    [Fact]
    public async Task Sheets_WithoutTheLinesOfJson_BringEveryRowLetterByLetter()
    {
        var foundry = await Foundry.Found(database);
        await HeatStory.Tell(foundry, HeatState.Closed);
        foreach (var (text, i) in Odd.Select((t, i) => (t, i)))
            await foundry.Write("Grade", (db, _) => db.Grades.Add(new() { Code = $"odd {i:D2} {Guid.NewGuid():N}", Family = Grades.IronFamily.Grey, Source = text }));
        var written = await Writer.Export(File, Ct);
        await Remove(e => e.FullName.StartsWith("records/", StringComparison.Ordinal));

        foreach (var target in await EmptyDatabases.Both(folder.FullName))
        {
            var read = await new ArchiveReader(target).Read(File, Ct);

            Assert.True(read.State == BackupState.Done, $"{target.Provider}: {read}");
            Assert.Equal((written.Trail!.HeadHash, written.Trail.Rows), (read.Trail!.HeadHash, read.Trail.Rows));
            await using var db = new ContextFactory(target).CreateDbContext();
            Assert.Equal(Odd, await db.Grades.Where(g => g.Code.StartsWith("odd ")).OrderBy(g => g.Id).Select(g => g.Source).ToListAsync(Ct));
            await EmptyDatabases.GoesOn(target);
        }
    }

    [Theory]
    [InlineData(",97,", ",98,", BackupState.Broken, "")]
    [InlineData(",97,", ",much,", BackupState.Foreign, "sheets/Materials.csv, line 2: MetallicYieldPercent")]
    [InlineData(",97,", ",97,97,", BackupState.Foreign, "cells under")]
    [InlineData(",97,", ",9\"7,", BackupState.Foreign, "quotation mark")]
    [InlineData("MetallicYieldPercent", "Yield", BackupState.Foreign, "no column MetallicYieldPercent")]
    public async Task Sheet_ThatWasChanged_IsRefusedAndLeavesTheDatabaseEmpty(string from, string to, BackupState state, string why)
    {
        await HeatStory.Tell(await Foundry.Found(database), HeatState.Closed);
        await Writer.Export(File, Ct);
        await Change("sheets/Materials.csv", from, to);
        await Remove(e => e.FullName == "records/Materials.jsonl");
        var target = EmptyDatabases.Sqlite(folder.FullName);

        var read = await new ArchiveReader(target).Read(File, Ct);

        Assert.True(read.State == state && (read.Detail ?? "").Contains(why, StringComparison.Ordinal), read.ToString());
        Assert.Equal(0, (await RowCounts.Of(new ContextFactory(target))).Where(t => t.Key != "TrailHeads").Sum(t => t.Value));
    }

    private async Task Remove(Func<ZipArchiveEntry, bool> which)
    {
        await using var zip = await ZipFile.OpenAsync(File, ZipArchiveMode.Update, Ct);
        var gone = zip.Entries.Where(which).ToList();
        Assert.NotEmpty(gone);
        foreach (var entry in gone) entry.Delete();
    }

    private async Task Secret()
    {
        await using var db = database.Open();
        db.ApiKeys.Add(new() { Name = "spectrometer", Hash = $"unguessable{Guid.NewGuid():N}", CreatedAt = database.Clock.GetUtcNow() });
        db.DataProtectionKeys.Add(new() { FriendlyName = "key", Xml = "<unguessable/>" });
        (await db.Users.FirstAsync(Ct)).PasswordHash = "unguessable";
        await db.SaveChangesAsync(Ct);
    }

    private async Task<string> Text(string name)
    {
        await using var zip = await ZipFile.OpenReadAsync(File, Ct);
        using var text = new StreamReader(await zip.GetEntry(name)!.OpenAsync(Ct));
        return await text.ReadToEndAsync(Ct);
    }

    private async Task Change(string name, string from, string to)
    {
        var text = await Text(name);
        Assert.Contains(from, text, StringComparison.Ordinal);
        await using var zip = await ZipFile.OpenAsync(File, ZipArchiveMode.Update, Ct);
        zip.GetEntry(name)!.Delete();
        await using var changed = new StreamWriter(zip.CreateEntry(name).Open());
        await changed.WriteAsync(text.Replace(from, to, StringComparison.Ordinal));
    }
}

public sealed class ArchiveTestsOnSqlite(SqliteDatabase database) : ArchiveTests(database), IClassFixture<SqliteDatabase>;

public sealed class ArchiveTestsOnPostgres(PostgresDatabase database) : ArchiveTests(database), IClassFixture<PostgresDatabase>;
