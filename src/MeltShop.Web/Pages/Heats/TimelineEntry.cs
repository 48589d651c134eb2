using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Heats;

namespace MeltShop.Web.Pages.Heats;

/// <summary>What stands in the timeline: a fact in force, or one that was moved to another heat, with all that it corrects.</summary>
/// <param name="Earlier">What stood there before, the latest first.</param>
public sealed record TimelineEntry(TimelineRow Row, IReadOnlyList<TimelineRow> Earlier)
{
    public Origin Origin => Row.Origin;

    /// <summary>What stays the same when it is corrected: the fact that stood there first.</summary>
    public long FirstId => (Earlier.Count > 0 ? Earlier[^1] : Row).Origin.FactId;

    /// <summary>The entries of a heat, the newest first; a fact that was corrected on the same heat stands under its correction.</summary>
    public static IReadOnlyList<TimelineEntry> Of(HeatView heat)
    {
        ArgumentNullException.ThrowIfNull(heat);
        var rows = heat.Timeline.ToDictionary(row => (row.Kind, row.Origin.FactId));
        return
        [
            .. heat.Timeline.Where(row => row.Origin.CorrectedBy is not { } by || !rows.ContainsKey((row.Kind, by.FactId)))
                .Reverse().Select(row => new TimelineEntry(row, [.. Before(row, rows)])),
        ];
    }

    private static IEnumerable<TimelineRow> Before(TimelineRow row, Dictionary<(TimelineKind, long), TimelineRow> rows)
    {
        while (row.Origin.CorrectsId is { } id && rows.TryGetValue((row.Kind, id), out var former)) yield return row = former;
    }
}
