using MeltShop.Records.Exchange;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Databases;

/// <summary>Reads back from the running database whether what it acknowledges is on the disk.</summary>
public static class Durability
{
    private static readonly (string Name, string[] Durable)[] Sqlite = [("journal_mode", ["wal"]), ("synchronous", ["2", "3"])];

    private static readonly (string Name, string[] Durable)[] Postgres =
    [
        ("fsync", ["on"]), ("full_page_writes", ["on"]), ("synchronous_commit", ["on", "local", "remote_write", "remote_apply"]),
    ];

    /// <summary>The settings with which a power cut may take an acknowledged entry, as <c>fsync=off</c>; none where all is well.</summary>
    public static async Task<IReadOnlyList<string>> Weaknesses(RecordsContext db, CancellationToken ct = default)
    {
        ArgumentNullException.ThrowIfNull(db);
        var (word, settings) = db.Database.IsSqlite() ? ("PRAGMA", Sqlite) : ("SHOW", Postgres);
        var weak = new List<string>();
        foreach (var (name, durable) in settings)
        {
            await using var command = await StoredRows.Command(db, $"{word} {name}", ct);
            var value = FormattableString.Invariant($"{await command.ExecuteScalarAsync(ct)}");
            if (!durable.Contains(value)) weak.Add($"{name}={value}");
        }

        return weak;
    }
}
