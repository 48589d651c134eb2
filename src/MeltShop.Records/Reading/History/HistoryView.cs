using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;

namespace MeltShop.Records.Reading.History;

/// <summary>What to look for; null means whatever it is.</summary>
/// <param name="Verdict">Heats with at least one ladle whose castings got this verdict last.</param>
/// <param name="Number">A beginning of the heat number, whatever its case, or of its last part in any year.</param>
/// <param name="From">Started at this instant or later.</param>
/// <param name="Before">Started before this instant.</param>
public sealed record HistoryFilter(
    long? GradeId = null, long? FurnaceId = null, HeatState? State = null, CastingVerdict? Verdict = null, string? Number = null,
    DateTimeOffset? From = null, DateTimeOffset? Before = null);

/// <summary>The last row of a page: the next page starts below it.</summary>
public sealed record HistoryPlace(DateTimeOffset StartedAt, long Id);

/// <param name="Rows">The latest start first; where a number was looked for, the greatest number first.</param>
/// <param name="Next">Where the next page starts; null at the end.</param>
public sealed record HistoryView(IReadOnlyList<HistoryRow> Rows, HistoryPlace? Next)
{
    public bool More => Next is not null;
}

/// <param name="Ladles">Treated ladles by state.</param>
public sealed record HistoryRow(
    long Id, string Number, string GradeCode, string FurnaceName, HeatState State, DateTimeOffset StartedAt, DateTimeOffset? ClosedAt,
    IReadOnlyDictionary<TreatedLadleState, int> Ladles);
