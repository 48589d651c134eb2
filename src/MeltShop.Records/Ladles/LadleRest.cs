using MeltShop.Records.Keeping;

namespace MeltShop.Records.Ladles;

/// <summary>
/// Iron of a ladle that went into pig moulds, or into another ladle, a pouring furnace or a trough. What went back into a furnace is a
/// line of that furnace's ledger.
/// </summary>
public sealed class LadleRest : Fact, IWithdrawable
{
    public required long TreatedLadleId { get; init; }

    /// <summary>The ladle that it was poured into; null for pig moulds.</summary>
    public long? IntoLadleId { get; init; }

    public required double Kg { get; init; }

    /// <summary>Magnesium of the iron in that ladle right after mixing, %, a prediction; null for pig moulds and grey iron.</summary>
    public double? MixedMgPercent { get; init; }

    /// <summary>Minutes from then until that ladle's floor; null where it starts under it.</summary>
    public double? MinutesToFloor { get; init; }

    /// <summary>The least of the band of <see cref="MixedMgPercent"/>, %; null where the band of either iron is not known.</summary>
    public double? MixedMgLeastPercent { get; init; }

    /// <summary>The most of that band, %.</summary>
    public double? MixedMgMostPercent { get; init; }

    /// <summary>Minutes to the floor from the least of the band with the fastest fade; null where it starts under it, or no band is known.</summary>
    public double? LeastMinutesToFloor { get; init; }

    /// <summary>For what went into a ladle: its magnesium before it was poured over, %, a prediction; null for grey iron.</summary>
    public double? CameMgPercent { get; init; }

    /// <summary>For what went into a ladle: since when the oldest inoculation in it counts.</summary>
    public DateTimeOffset? InoculatedAt { get; init; }

    /// <summary>For what went into a ladle: the last sample of the ladle that it came from, its analysis; null where none was taken.</summary>
    public long? SampleId { get; init; }

    public bool IsWithdrawn { get; init; }
}
