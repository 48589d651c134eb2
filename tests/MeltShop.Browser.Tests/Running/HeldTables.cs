using System.Data.Common;

namespace MeltShop.Browser.Tests.Running;

/// <summary>Tables that whoever wants to read them has to wait for: a page that shows them is loading for as long as a test wants to look at that.</summary>
internal sealed class HeldTables : IAsyncDisposable
{
    private readonly DbConnection connection;

    private HeldTables(DbConnection connection) => this.connection = connection;

    public static async Task<HeldTables> TakeAsync(DbConnection connection, IEnumerable<string> tables)
    {
        var held = new HeldTables(connection);
        await held.DoAsync($"BEGIN; LOCK TABLE {string.Join(", ", tables.Select(table => $"\"{table}\""))} IN ACCESS EXCLUSIVE MODE");
        return held;
    }

    /// <summary>
    /// Ends the reading of all who wait, as a database does that fails. A transaction sees who waits as at its first look: without a new one it would
    /// cancel that connection for ever, and another's reading would wait out its 30 s.
    /// </summary>
    public Task BreakAsync() => DoAsync("SELECT pg_stat_clear_snapshot(); SELECT pg_cancel_backend(pid) FROM pg_stat_activity WHERE datname = current_database() AND wait_event_type = 'Lock'");

    public ValueTask DisposeAsync() => connection.DisposeAsync();

    private async Task DoAsync(string statement)
    {
        await using var command = connection.CreateCommand();
#pragma warning disable CA2100 // the statements are the tests' own
        command.CommandText = statement;
#pragma warning restore CA2100
        await command.ExecuteNonQueryAsync();
    }
}
