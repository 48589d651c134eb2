namespace MeltShop.Records.Writing;

/// <summary>What a check of the trail found.</summary>
/// <param name="Entries">Rows of the trail.</param>
/// <param name="HeadHash">The hash at the end, to compare with one that was printed or kept elsewhere.</param>
/// <param name="Rows">Rows of the records that the trail knows.</param>
/// <param name="Faults">What is wrong; empty where everything holds.</param>
public sealed record TrailReport(long Entries, string HeadHash, long Rows, IReadOnlyList<TrailFault> Faults)
{
    public bool Holds => Faults.Count == 0;
}

/// <param name="Code">
/// <c>trail.gap</c>, <c>trail.previous</c>, <c>trail.hash</c>, <c>trail.unreadable</c>, <c>trail.head</c>, <c>trail.mark</c> of the chain;
/// <c>row.changed</c>, <c>row.missing</c>, <c>row.unknown</c> of the records.
/// </param>
/// <param name="Number">The row of the trail, or null.</param>
/// <param name="Table">The table, or null.</param>
/// <param name="Key">The row of the table.</param>
/// <param name="Column">The column that differs.</param>
public sealed record TrailFault(string Code, long? Number = null, string? Table = null, string? Key = null, string? Column = null);
