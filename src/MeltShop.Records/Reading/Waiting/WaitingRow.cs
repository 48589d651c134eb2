namespace MeltShop.Records.Reading.Waiting;

/// <summary>What waits for somebody's hand.</summary>
public enum WaitingFor
{
    /// <summary>A heat is charging: its charge is to be weighed in.</summary>
    Charging,

    /// <summary>An accepted correction of a bath has a material that was not weighed since.</summary>
    Correction,

    /// <summary>A bath that was never sampled, or was added to since its last sample.</summary>
    BathSample,

    /// <summary>A prepared ladle: it is to be tapped.</summary>
    Tap,

    /// <summary>A tapped ladle whose end of reaction nobody has said.</summary>
    ReactionEnd,

    /// <summary>A poured ladle without a sample of its last metal.</summary>
    LastMetal,

    /// <summary>Castings that are held until somebody decides.</summary>
    Decision,
}

/// <param name="HeatId">The heat that it belongs to.</param>
/// <param name="TreatedLadleId">The ladle, where it is about one.</param>
/// <param name="HeatNumber">The heat's number.</param>
/// <param name="GradeCode">The heat's grade.</param>
/// <param name="LadleOrdinal">The ladle's running number in its heat, where it is about one.</param>
/// <param name="Since">How long it has waited.</param>
public sealed record WaitingRow(
    WaitingFor For, long HeatId, long? TreatedLadleId, string HeatNumber, string GradeCode, int? LadleOrdinal, DateTimeOffset Since);
