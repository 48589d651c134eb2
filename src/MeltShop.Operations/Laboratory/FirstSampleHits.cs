using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Laboratory;

namespace MeltShop.Operations.Laboratory;

/// <summary>How many heats were inside the furnace window with their first coin.</summary>
/// <param name="Hits">All of the window measured and inside.</param>
/// <param name="Judged">Heats whose first coin could be held against the whole window.</param>
/// <param name="Unjudged">Heats whose first coin lacked something that the window asks for.</param>
public sealed record FirstSampleHits(int Hits, int Judged, int Unjudged)
{
    /// <summary>Share of the judged ones, %; null where there is none.</summary>
    public double? Percent => Judged == 0 ? null : 100.0 * Hits / Judged;

    public static FirstSampleHits Of(IReadOnlyList<FirstSample> firsts, IReadOnlyList<GradeView> grades)
    {
        ArgumentNullException.ThrowIfNull(firsts);
        var windows = grades.ToDictionary(g => g.Id, g => g.At(WindowStage.Furnace).Select(w => new GradeWindow { Stage = w.Stage, Quantity = w.Quantity, Least = w.Least, Most = w.Most }).ToList());
        var (hits, judged, unjudged) = (0, 0, 0);
        foreach (var first in firsts)
        {
            var verdicts = windows.TryGetValue(first.GradeId, out var window) ? WindowVerdict.Of(window, first.Means) : [];
            if (verdicts.Count == 0 || verdicts.Any(v => v.Standing is WindowStanding.NotMeasured or WindowStanding.NotJudged)) unjudged++;
            else
            {
                judged++;
                if (verdicts.All(v => v.Standing == WindowStanding.Inside)) hits++;
            }
        }

        return new(hits, judged, unjudged);
    }
}
