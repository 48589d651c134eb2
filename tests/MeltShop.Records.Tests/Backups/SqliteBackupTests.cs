using MeltShop.Records.Backups;
using MeltShop.Records.Databases;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Tests.Databases;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Backups;

/// <summary>A backup counts when it has been restored. (SQLite only: PostgreSQL has its own programs for it.)</summary>
public sealed class SqliteBackupTests : IAsyncLifetime
{
    private readonly SqliteDatabase database = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    private string Folder => Path.GetDirectoryName(database.File)!;

    private string Backup => Path.Combine(Folder, "backups", "monday.db");

    public ValueTask InitializeAsync() => database.InitializeAsync();

    public ValueTask DisposeAsync() => database.DisposeAsync();

    [Fact]
    public async Task Backup_Restored_HoldsTheSameRowsTrailAndHeat()
    {
        var story = await HeatStory.Tell(await Foundry.Found(database), HeatState.Closed);

        var written = await new SqliteBackup(database.Options).Write(Backup, Ct);
        var elsewhere = Elsewhere();
        var restored = await new SqliteBackup(elsewhere).Restore(Backup, Ct);

        Assert.Equal((BackupState.Done, BackupState.Done), (written.State, restored.State));
        Assert.Equal((written.Trail!.HeadHash, written.Trail.Rows), (restored.Trail!.HeadHash, restored.Trail.Rows));
        Assert.Equal(await Counts(database.Contexts), await Counts(new ContextFactory(elsewhere)));
        Assert.Equal(
            RecordsJson.Text(await new HeatPage(database.Contexts).Load(story.Heat.Id, Ct)),
            RecordsJson.Text(await new HeatPage(new ContextFactory(elsewhere)).Load(story.Heat.Id, Ct)));
        Assert.DoesNotContain(Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories), f => f.Contains("unfinished", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Backup_WhilePeopleWork_IsOneStateAndLosesNobodysWork()
    {
        var foundry = await Foundry.Found(database);
        var heat = await foundry.Heat();
        using var enough = CancellationTokenSource.CreateLinkedTokenSource(Ct);
        var work = Task.Run(async () =>
        {
            var done = 0;
            for (; !enough.IsCancellationRequested; done++)
                await foundry.Write("WeighIn", (db, stamp) => db.Weighings.Add(stamp.Weighing(heat.Id, foundry.Steel.Id, 1)));
            return done;
        }, Ct);

        var outcomes = new List<BackupOutcome>();
        for (var n = 0; n < 3; n++) outcomes.Add(await new SqliteBackup(database.Options).Write($"{Backup}-{n}", Ct));
        await enough.CancelAsync();
        var done = await work;

        Assert.All(outcomes, o => Assert.Equal(BackupState.Done, o.State));
        await using var db = database.Open();
        Assert.Equal(done, await db.Weighings.CountAsync(Ct));
        Assert.True((await new TrailCheck(database.Contexts).Run(Ct)).Holds);
    }

    [Fact]
    public async Task Backup_OverAFile_IsRefused()
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Backup)!);
        await File.WriteAllTextAsync(Backup, "mine", Ct);

        Assert.Equal(BackupState.Occupied, (await new SqliteBackup(database.Options).Write(Backup, Ct)).State);
        Assert.Equal("mine", await File.ReadAllTextAsync(Backup, Ct));
    }

    [Fact]
    public async Task Restore_OverADatabaseOrOfNothingOrOfSomethingElse_IsRefusedAndLeavesNothing()
    {
        await new SqliteBackup(database.Options).Write(Backup, Ct);
        var text = Path.Combine(Folder, "letter.txt");
        await File.WriteAllTextAsync(text, new string('x', 5000), Ct);
        var stranger = Path.Combine(Folder, "stranger.db");
        await using (var db = new ContextFactory(SqliteDatabase.OptionsFor(stranger)).CreateDbContext()) await db.Send("CREATE TABLE stamps (id INTEGER)");
        var elsewhere = Elsewhere();

        Assert.Equal(BackupState.Foreign, (await new SqliteBackup(elsewhere).Restore(stranger, Ct)).State);
        Assert.Equal(BackupState.Occupied, (await new SqliteBackup(database.Options).Restore(Backup, Ct)).State);
        Assert.Equal(BackupState.Missing, (await new SqliteBackup(elsewhere).Restore(Backup + "x", Ct)).State);
        Assert.Equal(BackupState.Foreign, (await new SqliteBackup(elsewhere).Restore(text, Ct)).State);
        Assert.Empty(Directory.EnumerateFiles(Path.GetDirectoryName(FileOf(elsewhere))!));
    }

    [Fact]
    public async Task Restore_OfABackupThatWasTamperedWith_IsRefused()
    {
        var foundry = await Foundry.Found(database);
        await new SqliteBackup(database.Options).Write(Backup, Ct);
        await using (var db = new ContextFactory(SqliteDatabase.OptionsFor(Backup)).CreateDbContext())
            await db.Materials.Where(m => m.Id == foundry.Steel.Id).ExecuteUpdateAsync(m => m.SetProperty(x => x.MetallicYieldPercent, 99), Ct);

        var outcome = await new SqliteBackup(Elsewhere()).Restore(Backup, Ct);

        Assert.Equal(BackupState.Broken, outcome.State);
        Assert.Equal(("row.changed", "MetallicYieldPercent"), Assert.Single(outcome.Trail!.Faults.Select(f => (f.Code, f.Column))));
    }

    [Fact]
    public async Task Restore_OfABackupThatEndsElsewhere_IsRefused()
    {
        await Foundry.Found(database);
        await new SqliteBackup(database.Options).Write(Backup, Ct);
        await Foundry.Found(database);
        await new SqliteBackup(database.Options).Write(Backup + "2", Ct);
        File.Copy(BackupHead.FileOf(Backup), BackupHead.FileOf(Backup + "2"), overwrite: true);

        var outcome = await new SqliteBackup(Elsewhere()).Restore(Backup + "2", Ct);

        Assert.Equal((BackupState.Broken, true), (outcome.State, outcome.Trail!.Holds));
    }

    private RecordsOptions Elsewhere() => SqliteDatabase.OptionsFor(Path.Combine(Folder, $"{Guid.NewGuid():N}", "records.db"));

    private static string FileOf(RecordsOptions options) => options.ConnectionString["Data Source=".Length..];

    private static async Task<Dictionary<string, int>> Counts(IDbContextFactory<RecordsContext> contexts)
    {
        await using var db = await contexts.CreateDbContextAsync(Ct);
        var counts = new Dictionary<string, int>();
        foreach (var table in db.Model.GetEntityTypes().Select(t => t.GetTableName()!).Distinct())
            counts[table] = await db.Ask<int>($"""SELECT COUNT(*) AS "Value" FROM "{table}" """);
        Assert.True(counts.Values.Sum() > 0);
        return counts;
    }
}
