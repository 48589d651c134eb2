using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
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
    IReadOnlyList<SampleView> Samples, IReadOnlyList<TreatedLadleView> Ladles, IReadOnlyList<TimelineRow> Timeline, bool More)
{
    /// <summary>Lines of the furnace's ledger that belong to the heat, corrected ones included.</summary>
    public IReadOnlyList<MetalView> Metal { get; init; } = [];

    /// <summary>What the furnace's ledger rests on, whatever heats lie between.</summary>
    public LedgerBasis Ledger { get; init; } = new(null, 0, null, 0, 0);

    /// <summary>Burns that were set aside or taken back.</summary>
    public IReadOnlyList<BurnDecisionView> BurnDecisions { get; init; } = [];

    /// <summary>What was put right about the heat itself, the latest last.</summary>
    public IReadOnlyList<HeatCorrectionView> OfItself { get; init; } = [];

    /// <summary>States that the heat came into.</summary>
    public IReadOnlyList<HeatStepView> Steps { get; init; } = [];

    /// <summary>When it came into them, those in force.</summary>
    public IEnumerable<StepTime> StepTimes => Steps.Where(step => !step.Origin.IsCorrected).Select(step => new StepTime(step.State, step.Origin.ObservedAt));

    /// <summary>States that its ladles came into.</summary>
    public IReadOnlyList<LadleStepView> LadleSteps { get; init; } = [];

    /// <summary>Corrections of the bath that were accepted, the latest last.</summary>
    public IReadOnlyList<BathCorrectionView> Corrections { get; init; } = [];

    /// <summary>The heel on record; null where there is none, and once the heat is not being charged any more.</summary>
    public HeatHeelView? Heel { get; init; }

    /// <summary>Coins of which no result has come yet.</summary>
    public IReadOnlyList<CoinView> Coins { get; init; } = [];

    /// <summary>The instruments of the samples, by their id, with their checks.</summary>
    public IReadOnlyDictionary<long, InstrumentState> Instruments { get; init; } = new Dictionary<long, InstrumentState>();

    /// <summary>What was known until then is what the view shows; null where it shows all.</summary>
    public DateTimeOffset? KnownAt { get; init; }

    /// <summary>Grades, instruments or their checks were changed after that time: what is judged by them is judged by what holds now.</summary>
    public bool IsJudgedAnew { get; init; }
}

public sealed record WeighingView(Origin Origin, long MaterialId, string MaterialCode, string MaterialName, double Kg, bool IntoBath)
{
    /// <summary>As it stands on the bag or the pile; null where nobody said.</summary>
    public string? Lot { get; init; }
}

public sealed record TemperatureView(Origin Origin, double TemperatureC, long? TreatedLadleId);

/// <inheritdoc cref="FurnaceMetal"/>
public sealed record MetalView(
    Origin Origin, FurnaceMetalKind Kind, double Kg, double? LevelKg, double? PlusMinusKg, long? TreatedLadleId, Analysis Analysis);

/// <inheritdoc cref="Records.Laboratory.BurnDecision"/>
public sealed record BurnDecisionView(Origin Origin, long SampleId, int Ordinal, bool SetAside);

/// <inheritdoc cref="HeatCorrection"/>
public sealed record HeatCorrectionView(
    Origin Origin, string GradeCode, string FormerGradeCode, DateTimeOffset StartedAt, DateTimeOffset FormerStartedAt, double? HeelKg, double? FormerHeelKg)
{
    /// <summary>The heat was in another furnace than was said before.</summary>
    public bool IsOtherFurnace { get; init; }

    /// <summary>Empty where nothing was said of the furnace.</summary>
    public string FurnaceName { get; init; } = "";

    public string FormerFurnaceName { get; init; } = "";

    public DateTimeOffset? ClosedAt { get; init; }

    public DateTimeOffset? FormerClosedAt { get; init; }
}

/// <inheritdoc cref="HeatStep"/>
public sealed record HeatStepView(Origin Origin, HeatState State);

/// <inheritdoc cref="LadleStep"/>
public sealed record LadleStepView(Origin Origin, long TreatedLadleId, TreatedLadleState State);

/// <summary>What was in the furnace when the heat started, as the heat before or a dip left it.</summary>
/// <param name="Analysis">Empty where it was not measured.</param>
public sealed record HeatHeelView(Analysis Analysis, DateTimeOffset EnteredAt);

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

    /// <summary>A dip, metal pigged out or poured back.</summary>
    Metal,
    BurnDecision,

    /// <summary>Started, closed or called off.</summary>
    HeatStep,

    /// <summary>The heat's own grade or start was put right.</summary>
    HeatCorrection,

    /// <summary>The reaction ended, or the ladle was not tapped.</summary>
    LadleStep,
}
