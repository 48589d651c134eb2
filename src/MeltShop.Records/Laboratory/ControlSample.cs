using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Keeping;

namespace MeltShop.Records.Laboratory;

/// <summary>A piece of known composition with which an instrument is checked.</summary>
public sealed class ReferenceMaterial : IVersioned
{
    public long Id { get; init; }
    public required string Code { get; init; }
    public required string Name { get; set; }

    /// <summary>Who certifies the values, and in which document.</summary>
    public required string Certificate { get; set; }

    public bool IsActive { get; set; } = true;
    public Guid Version { get; set; }
    public List<CertifiedValue> Values { get; init; } = [];
}

/// <summary>Certified mass percent of one element.</summary>
public sealed class CertifiedValue
{
    public long Id { get; init; }
    public long ReferenceMaterialId { get; init; }
    public required Element Element { get; init; }
    public required double Percent { get; init; }

    /// <summary>As the certificate states it, percentage points; null where it states none.</summary>
    public double? PlusMinus { get; init; }
}

/// <summary>A check of an instrument on a reference material.</summary>
public sealed class ControlSample : Fact
{
    public required long InstrumentId { get; init; }
    public required long ReferenceMaterialId { get; init; }
    public string? Remarks { get; init; }
    public List<ControlReading> Readings { get; init; } = [];
}

/// <summary>One value of a burn of a control sample.</summary>
public sealed class ControlReading
{
    public long Id { get; init; }
    public long ControlSampleId { get; init; }

    /// <summary>The burn, from 1.</summary>
    public required int Ordinal { get; init; }

    public required Element Element { get; init; }

    /// <summary>Mass percent; with <see cref="BelowDetection"/> the limit of detection.</summary>
    public required double Percent { get; init; }

    public bool BelowDetection { get; init; }
    public required string InstrumentText { get; init; }
}
