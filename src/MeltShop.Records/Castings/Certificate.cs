using MeltShop.Records.Keeping;

namespace MeltShop.Records.Castings;

/// <summary>A certificate as it was issued: a reprint is these bytes, and a change is a new revision that supersedes this one.</summary>
public sealed class Certificate : Fact
{
    public required long TreatedLadleId { get; init; }

    /// <summary>The heat's number and the ladle's.</summary>
    public required string Number { get; init; }

    /// <summary>From 1.</summary>
    public required int Revision { get; init; }

    /// <summary>The PDF.</summary>
    public required byte[] Document { get; init; }

    /// <summary>SHA-256 of <see cref="Document"/>, hexadecimal.</summary>
    public required string Sha256 { get; init; }

    /// <summary>End of the trail when it was made, as printed on it.</summary>
    public required string TrailHead { get; init; }
}
