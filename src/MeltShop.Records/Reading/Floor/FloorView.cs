using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Laboratory;

namespace MeltShop.Records.Reading.Floor;

/// <summary>What runs on the shop floor now.</summary>
/// <param name="SiteName">Null before the site is set up.</param>
/// <param name="TimeZone">IANA zone of the site.</param>
/// <param name="OpenLadles">Prepared, tapped or pouring.</param>
/// <param name="HeldLadles">Those whose castings may not go, the latest first.</param>
/// <param name="More">True where there are more ladles than are shown.</param>
public sealed record FloorView(
    string? SiteName, string? TimeZone, IReadOnlyList<FloorFurnace> Furnaces, IReadOnlyList<FloorLadle> OpenLadles,
    IReadOnlyList<FloorLadle> HeldLadles, bool More);

/// <param name="LiquidKg">Sum of its metal ledger.</param>
/// <param name="Heat">The heat in it, or null.</param>
public sealed record FloorFurnace(long Id, string Code, string Name, double CapacityKg, double LiquidKg, FloorHeat? Heat);

/// <param name="Sample">Last sample from the furnace.</param>
public sealed record FloorHeat(
    long Id, string Number, string GradeCode, HeatState State, DateTimeOffset StartedAt, FloorTemperature? Temperature, SampleView? Sample)
{
    /// <summary>When something last went into the bath; null where nothing did.</summary>
    public DateTimeOffset? AddedToAt { get; init; }

    /// <summary>When it came into its states, those in force.</summary>
    public IReadOnlyList<Heats.StepTime> Steps { get; init; } = [];

    /// <summary>When a correction of the bath was last accepted; null where none was.</summary>
    public DateTimeOffset? CorrectedAt { get; init; }
}

public sealed record FloorTemperature(double TemperatureC, DateTimeOffset ObservedAt);

/// <param name="Kg">Really tapped; null before the tap.</param>
/// <param name="MgAfterTreatmentPercent">Predicted at the end of the reaction.</param>
/// <param name="MinutesToFloor">Minute after it at which the floor is reached.</param>
public sealed record FloorLadle(
    long Id, long HeatId, string HeatNumber, int Ordinal, string LadleName, string GradeCode, TreatedLadleState State,
    DateTimeOffset? ReactionEndedAt, double? Kg, double? MgAfterTreatmentPercent, double? MinutesToFloor)
{
    /// <summary>When the last thing was done to it.</summary>
    public required DateTimeOffset Since { get; init; }

    /// <summary>When the last sample of its last metal was taken; null where there is none.</summary>
    public DateTimeOffset? LastMetalAt { get; init; }

    /// <summary>What its clocks count from; null where it is held.</summary>
    public Ladles.LadleTimes? Times { get; init; }

    /// <summary>Its iron by the scales; null where it is not running.</summary>
    public Ladles.LadleContent? Content { get; init; }

    /// <summary>Moulds that were poured after their limit.</summary>
    public int LateMoulds { get; init; }
}
