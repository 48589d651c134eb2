using MeltShop.Metallurgy.Elements;

namespace MeltShop.Records.Laboratory;

/// <summary>One spark on the coin. A burn that is set aside is set aside for all elements, and stays visible.</summary>
public sealed class Burn
{
    public long Id { get; init; }
    public long SampleId { get; init; }

    /// <summary>From 1.</summary>
    public required int Ordinal { get; init; }

    public bool SetAside { get; set; }
    public string? SetAsideReason { get; set; }
    public List<Reading> Readings { get; init; } = [];
}

/// <summary>One value as the instrument gave it.</summary>
public sealed class Reading
{
    public long Id { get; init; }
    public long BurnId { get; init; }
    public required Element Element { get; init; }

    /// <summary>Mass percent; with <see cref="BelowDetection"/> the limit of detection.</summary>
    public required double Percent { get; init; }

    public bool BelowDetection { get; init; }

    /// <summary>What stood on the screen or in the file, letter by letter.</summary>
    public required string InstrumentText { get; init; }
}

/// <summary>Mean over the burns that count, kept for trends and lists.</summary>
public sealed class SampleMean
{
    public long Id { get; init; }
    public long SampleId { get; init; }
    public required Element Element { get; init; }
    public required double Percent { get; set; }
    public required int Count { get; set; }
}
