using MeltShop.Operations.Importing.Rows;

namespace MeltShop.Operations.Importing.Subjects;

/// <summary>A sample of a file with what it names in the records.</summary>
/// <param name="Identity">The same for the same sample, whatever file it comes with.</param>
/// <param name="KnownSampleId">The sample, or the check, that it came in as before; null where it is new.</param>
public sealed record FoundSample(ImportSample Sample, long HeatId, long? TreatedLadleId, string Identity, long? KnownSampleId = null)
{
    /// <summary>The reference material of a check of the instrument, which is of no heat; null for a sample of a heat.</summary>
    public long? ReferenceId { get; init; }
}

/// <summary>What a file brings, looked up in the records as they are now.</summary>
/// <param name="New">To be taken in.</param>
/// <param name="Known">Here already, with the same values.</param>
/// <param name="Faults">Why rows do not count: those of the file itself and those that the records have, in the order of the file.</param>
public sealed record FoundSamples(IReadOnlyList<FoundSample> New, IReadOnlyList<FoundSample> Known, IReadOnlyList<RowFault> Faults)
{
    public int NewRows => New.Sum(s => s.Sample.Rows.Count);

    public int KnownRows => Known.Sum(s => s.Sample.Rows.Count);

    public int RefusedRows => Faults.Select(f => f.Line).Distinct().Count();
}
