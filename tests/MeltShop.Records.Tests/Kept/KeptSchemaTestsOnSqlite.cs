using MeltShop.Records.Tests.Databases;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Kept;

public sealed class KeptSchemaTestsOnSqlite(SqliteDatabase database) : KeptSchemaTests(database), IClassFixture<SqliteDatabase>
{
    protected override string Ending => "db";

    protected override string TablesStatement =>
        """SELECT name AS "Value" FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name NOT LIKE '__EF%'""";

    protected override Task<RecordsOptions> Load(string file)
    {
        var copy = Path.Combine(Path.GetDirectoryName(((SqliteDatabase)Database).File)!, $"{Guid.NewGuid():N}.db");
        File.Copy(file, copy);
        return Task.FromResult(SqliteDatabase.OptionsFor(copy));
    }

    /// <summary>A hundred almost empty tables and indexes: small pages make a small file.</summary>
    protected override async Task Write(string file)
    {
        File.Delete(file);
        await using var db = Database.Open();
        await db.Database.OpenConnectionAsync(Ct);
        await db.Send("PRAGMA page_size=1024");
        await db.Send($"VACUUM INTO '{file}'");
    }
}
