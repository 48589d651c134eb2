using MeltShop.Records.Backups;

namespace MeltShop.Records.Exchange.Archives;

/// <summary>The first thing to read in an archive: <c>contents.json</c>.</summary>
/// <param name="Format">Always <see cref="Name"/>.</param>
/// <param name="Version">Of the format.</param>
/// <param name="Schema">The migration that the tables belong to.</param>
/// <param name="MadeAt">When.</param>
/// <param name="Secrets">Whether passwords' hashes and keys are in it, as a backup needs them.</param>
/// <param name="Head">The end of the trail.</param>
/// <param name="Tables">In the order of their references.</param>
public sealed record ArchiveContents(
    string Format, int Version, string Schema, DateTimeOffset MadeAt, bool Secrets, BackupHead Head, IReadOnlyList<ArchiveTable> Tables)
{
    public const string Name = "meltshop-records";
    public const int Current = 1;
    public const string File = "contents.json";

    public static string RecordsOf(string table) => $"records/{table}.jsonl";

    public static string SheetOf(string table) => $"sheets/{table}.csv";
}

/// <param name="Name">Of the table.</param>
/// <param name="Rows">How many there are.</param>
/// <param name="Columns">What each holds.</param>
/// <param name="Key">The columns that tell rows apart.</param>
public sealed record ArchiveTable(string Name, long Rows, IReadOnlyList<StoredColumn> Columns, IReadOnlyList<string> Key)
{
    internal StoredTable Stored => new(Name, Columns, Key);
}
