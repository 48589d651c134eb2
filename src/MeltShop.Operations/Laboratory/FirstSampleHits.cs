using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Laboratory;

namespace MeltShop.Operations.Laboratory;

/// <summary>How many heats were inside the furnace window with their first coin.</summary>
/// <param name="Hits">All of the window measured and inside.</param>
/// <param name="Judged">Heats whose first coin could be held against the whole window.</param>
/// <param name="Unjudged">Heats whose first coin lacked something that the window asks for, or read below detection what decides it.</param>
public sealed record FirstSampleHits(int Hits, int Judged, int Unjudged)
{
    /// <summary>Share of the judged ones, %; null where there is none.</summary>
    public double? Percent => Judged == 0 ? null : 100.0 * Hits / Judged;

    /// <param name="firsts">The first coin of each heat.</param>
    /// <param name="grades">Their grades as they are now.</param>
    /// <param name="changes">What was changed since the earliest of the coins: each is held against the window of its time.</param>
    public static FirstSampleHits Of(IReadOnlyList<FirstSample> firsts, IReadOnlyList<GradeView> grades, IReadOnlyList<WindowChange> changes)
    {
        ArgumentNullException.ThrowIfNull(firsts);
        var byId = grades.ToDictionary(g => g.Id);
        var (hits, judged, unjudged) = (0, 0, 0);
        foreach (var first in firsts)
        {
            List<GradeWindow> windows = byId.TryGetValue(first.GradeId, out var grade) ? [.. Then(grade, first.At, changes)] : [];
            var verdicts = WindowVerdict.Of(windows, first.Means);
            var without = WindowVerdict.Of(windows, first.Unseen.Aggregate(first.Means, (means, element) => means.With(element, 0)));
            if (verdicts.Count == 0 || verdicts.Any(v => v.Standing is WindowStanding.NotMeasured or WindowStanding.NotJudged)
                || !verdicts.Select(v => v.Standing).SequenceEqual(without.Select(v => v.Standing))) unjudged++;
            else
            {
                judged++;
                if (verdicts.All(v => v.Standing == WindowStanding.Inside)) hits++;
            }
        }

        return new(hits, judged, unjudged);
    }

    private static IEnumerable<GradeWindow> Then(GradeView grade, DateTimeOffset at, IReadOnlyList<WindowChange> changes) =>
        grade.At(WindowStage.Furnace, at, changes).Select(w => new GradeWindow { Stage = w.Stage, Quantity = w.Quantity, Least = w.Least, Most = w.Most });
}
