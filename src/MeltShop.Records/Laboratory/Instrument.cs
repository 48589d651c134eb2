using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Keeping;

namespace MeltShop.Records.Laboratory;

public enum InstrumentKind
{
    /// <summary>Sparks a chilled coin: the carbon of a coin that froze grey is not to be believed.</summary>
    Spark,

    /// <summary>Burns a solid piece: carbon and sulphur, whatever state the carbon is in.</summary>
    Combustion,

    /// <summary>Reads the cooling curve of a cup.</summary>
    Cup,
    Other,
}

/// <summary>What results come from, with the elements that it measures and what is known of its scatter.</summary>
public sealed class Instrument : IVersioned
{
    public long Id { get; init; }
    public required string Code { get; init; }
    public required string Name { get; set; }
    public required InstrumentKind Kind { get; init; }

    /// <summary>It sends the mean of its burns and not the burns.</summary>
    public bool SendsMeanOnly { get; init; }

    /// <summary>Where its repeatabilities come from: a study of the shop's own, the maker's sheet, an estimate; null where none is said.</summary>
    public string? FiguresSource { get; set; }

    public bool IsActive { get; set; } = true;
    public Guid Version { get; set; }
    public List<InstrumentElement> Elements { get; init; } = [];
}

/// <summary>An element that an instrument measures.</summary>
public sealed class InstrumentElement
{
    public long Id { get; init; }
    public long InstrumentId { get; init; }
    public required Element Element { get; init; }

    /// <summary>Standard deviation of one result as the instrument sends it, a burn or a mean, under the same conditions; percentage points, over 0; null where nobody found it.</summary>
    public double? Repeatability { get; set; }

    /// <summary>Width of the guard band about a limit, as a multiple of the repeatability, 0 or more; null where the metallurgist set none.</summary>
    public double? GuardFactor { get; set; }
}
