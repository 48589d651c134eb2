namespace MeltShop.Records.Exchange;

/// <param name="Name">Of the column, the same on both databases.</param>
/// <param name="Kind">What it holds.</param>
public sealed record StoredColumn(string Name, ValueKind Kind);

/// <summary>A table as both databases have it.</summary>
/// <param name="Name">Of the table.</param>
/// <param name="Columns">All of them.</param>
/// <param name="Key">The columns of its primary key, in the key's order.</param>
public sealed record StoredTable(string Name, IReadOnlyList<StoredColumn> Columns, IReadOnlyList<string> Key)
{
    internal string Selection => string.Join(", ", Columns.Select(c => $"\"{c.Name}\""));

    internal string Order => string.Join(", ", Key.Select(k => $"\"{k}\""));

    /// <summary>The places of the key's columns in a row.</summary>
    internal IReadOnlyList<int> KeyPlaces => [.. Key.Select(k => Columns.Select(c => c.Name).ToList().IndexOf(k))];
}
