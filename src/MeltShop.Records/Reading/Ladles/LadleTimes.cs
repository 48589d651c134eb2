using MeltShop.Records.Ladles;

namespace MeltShop.Records.Reading.Ladles;

/// <summary>What the clocks of a treated ladle count from, and how long each may run.</summary>
public sealed record LadleTimes
{
    public required long TreatedLadleId { get; init; }
    public required TreatedLadleState State { get; init; }

    /// <summary>Null before the tap.</summary>
    public DateTimeOffset? TappedAt { get; init; }

    /// <summary>When the tap began; null where nobody said.</summary>
    public DateTimeOffset? TapStartedAt { get; init; }

    /// <summary>Null while nobody pressed, and for grey iron.</summary>
    public DateTimeOffset? ReactionEndedAt { get; init; }

    /// <summary>True where the magnesium fades in the ladle: not for grey iron, and not where it is given in the mould.</summary>
    public bool HasMagnesium { get; init; }

    /// <summary>A top-up, a mixing, or a sample under the floor, after which the magnesium counts anew; null where there was none.</summary>
    public DateTimeOffset? MgChangedAt { get; init; }

    /// <summary>Predicted at the start of its clock, %.</summary>
    public double? MgPercent { get; init; }

    /// <summary>The least of its band, %.</summary>
    public double? MgLeastPercent { get; init; }

    /// <summary>The most of its band, %.</summary>
    public double? MgMostPercent { get; init; }

    public double? MgFloorPercent { get; init; }

    /// <summary>Minutes from the start of its clock to the floor; null where it starts under it.</summary>
    public double? MinutesToFloor { get; init; }

    /// <summary>The same from the least of its band with the fastest fade.</summary>
    public double? LeastMinutesToFloor { get; init; }

    /// <summary>The last inoculation that was recorded; null for that of the card, which goes in during the tap.</summary>
    public DateTimeOffset? InoculatedAt { get; init; }

    public double? InoculationMinutes { get; init; }
    public double? HouseMinutes { get; init; }
    public double? LeastPouringC { get; init; }
    public double? HeatLossKPerMinute { get; init; }

    /// <summary>Last temperature of the ladle, °C, or the one at the tap less what the treatment costs.</summary>
    public double? TemperatureC { get; init; }

    public DateTimeOffset? TemperatureAt { get; init; }

    /// <summary>True where it was measured in the ladle after the tap.</summary>
    public bool IsTemperatureMeasured { get; init; }

    /// <summary>From when the magnesium counts: a top-up or mixing, the end of the reaction, or the start of the tap.</summary>
    public DateTimeOffset? MgFrom => (MgChangedAt, ReactionEndedAt) switch
    {
        ({ } changed, { } ended) => changed > ended ? changed : ended,
        ({ } changed, null) => changed,
        (null, { } ended) => ended,
        _ => TapStartedAt ?? TappedAt,
    };
}
