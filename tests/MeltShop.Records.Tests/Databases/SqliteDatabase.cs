using Microsoft.Data.Sqlite;

namespace MeltShop.Records.Tests.Databases;

public sealed class SqliteDatabase : Database
{
    // Migrated once, copied for each class. A mutation run, with a process for each mutant, names a file where it is kept.
    private static readonly Lazy<Task<byte[]>> Migrated = new(Migrate);

    private readonly Func<Task<byte[]>> image;
    private readonly string folder = Directory.CreateTempSubdirectory("meltshop-records-").FullName;

    public SqliteDatabase()
        : this(() => Migrated.Value)
    {
    }

    private SqliteDatabase(Func<Task<byte[]>> image) => this.image = image;

    public string File => Path.Combine(folder, "records.db");

    protected override async Task<RecordsOptions> Create()
    {
        await System.IO.File.WriteAllBytesAsync(File, await image());
        return OptionsFor(File);
    }

    public override async Task<Func<Database>> Seal()
    {
        Close();
        var bytes = await System.IO.File.ReadAllBytesAsync(File); // the last connection is closed: nothing is left in the log beside it
        await Drop();
        return () => new SqliteDatabase(() => Task.FromResult(bytes));
    }

    protected override Task Drop()
    {
        Close();
        Directory.Delete(folder, recursive: true);
        return Task.CompletedTask;
    }

    /// <summary>Connections of other tests stay open.</summary>
    private void Close()
    {
        using var connection = new SqliteConnection(Options.ConnectionString);
        SqliteConnection.ClearPool(connection);
    }

    /// <summary>A writer waits for the others as long as a busy machine takes.</summary>
    public static RecordsOptions OptionsFor(string file) => new() { Provider = RecordsProvider.Sqlite, ConnectionString = $"Data Source={file};Default Timeout=600" };

    private static async Task<byte[]> Migrate()
    {
        var kept = Environment.GetEnvironmentVariable("MELTSHOP_TEST_TEMPLATE");
        if (System.IO.File.Exists(kept)) return await System.IO.File.ReadAllBytesAsync(kept);
        var folder = Directory.CreateTempSubdirectory("meltshop-template-");
        var file = Path.Combine(folder.FullName, "template.db");
        await RecordsDatabase.MigrateAsync(OptionsFor(file) with { ConnectionString = $"Data Source={file};Pooling=False" });
        var bytes = await System.IO.File.ReadAllBytesAsync(file);
        if (kept is not null) System.IO.File.Move(file, kept, overwrite: true);
        folder.Delete(recursive: true);
        return bytes;
    }
}
