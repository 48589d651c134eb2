using System.Diagnostics;
using MeltShop.Records.Tests.Databases;
using Npgsql;

namespace MeltShop.Records.Tests.Kept;

public sealed class KeptSchemaTestsOnPostgres(PostgresDatabase database) : KeptSchemaTests(database), IClassFixture<PostgresDatabase>
{
    protected override string Ending => "sql";

    protected override string TablesStatement =>
        """SELECT tablename::text AS "Value" FROM pg_tables WHERE schemaname = 'public' AND tablename NOT LIKE '\_\_EF%'""";

    protected override async Task<RecordsOptions> Load(string file)
    {
        var name = $"kept_{Guid.NewGuid():N}";
        await PostgresDatabase.OnServer($"CREATE DATABASE {name}");
        var options = PostgresDatabase.OptionsFor(name);
        await using var connection = new NpgsqlConnection(options.ConnectionString + ";Pooling=False"); // the dump empties the search path
        await connection.OpenAsync(Ct);
#pragma warning disable CA2100 // the kept file
        await using var command = new NpgsqlCommand(await File.ReadAllTextAsync(file, Ct), connection);
#pragma warning restore CA2100
        await command.ExecuteNonQueryAsync(Ct);
        return options;
    }

    /// <summary>By PostgreSQL's own program, as plain SQL; without the lines that only its shell understands.</summary>
    protected override async Task Write(string file)
    {
        var to = new NpgsqlConnectionStringBuilder(Database.Options.ConnectionString);
        var start = new ProcessStartInfo("pg_dump", ["--no-owner", "--no-privileges", "--inserts", "--rows-per-insert=100", to.Database!]) { RedirectStandardOutput = true };
        (start.Environment["PGHOST"], start.Environment["PGPORT"], start.Environment["PGUSER"]) = (to.Host, $"{to.Port}", to.Username);
        if (to.Password is not null) start.Environment["PGPASSWORD"] = to.Password;
        using var dump = Process.Start(start)!;
        var text = await dump.StandardOutput.ReadToEndAsync(Ct);
        await dump.WaitForExitAsync(Ct);
        Assert.Equal(0, dump.ExitCode);
        var lines = text.Split('\n').Where(line => line.Length > 0 && !line.StartsWith("--", StringComparison.Ordinal) && !line.StartsWith('\\'));
        await File.WriteAllTextAsync(file, string.Join('\n', lines) + '\n', Ct);
    }
}
