using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Ladles;

namespace MeltShop.Records.Reading.Heats;

/// <summary>A heat with everything that was recorded about it, corrected facts included.</summary>
/// <param name="Plan">What was planned; its answer names the masses to weigh.</param>
/// <param name="Timeline">All of it in the order in which it happened.</param>
/// <param name="More">True where a list is longer than is shown.</param>
public sealed record HeatView(
    HeatHeadView Heat, GradeView Grade, PlanView Plan, IReadOnlyList<WeighingView> Weighings, IReadOnlyList<TemperatureView> Temperatures,
    IReadOnlyList<SampleView> Samples, IReadOnlyList<TreatedLadleView> Ladles, IReadOnlyList<TimelineRow> Timeline, bool More);

public sealed record WeighingView(Origin Origin, long MaterialId, string MaterialCode, string MaterialName, double Kg, bool IntoBath);

public sealed record TemperatureView(Origin Origin, double TemperatureC, long? TreatedLadleId);

/// <summary>A fact in the order of things; the lists of the view hold what it says.</summary>
public sealed record TimelineRow(TimelineKind Kind, Origin Origin);

public enum TimelineKind
{
    Weighing,
    Temperature,
    Sample,
    PocketCard,
    Tap,
    CastingDecision,
}
