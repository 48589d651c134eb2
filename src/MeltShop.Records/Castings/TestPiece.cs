using MeltShop.Metallurgy.Grades;
using MeltShop.Records.Keeping;
using MeltShop.Records.Ladles;

namespace MeltShop.Records.Castings;

public enum TestPieceShape
{
    KeelBlock,
    YBlock,
    Bar,
    CastOn,
    MicroCoupon,
    CutFromCasting,
}

/// <summary>A piece cast from the last metal of a treated ladle, or cut from a casting of it, that speaks for a test unit.</summary>
public sealed class TestPiece : Fact, IWithdrawable
{
    public required long TreatedLadleId { get; init; }

    /// <summary>What is stamped on it; once in a ladle.</summary>
    public required string Label { get; init; }

    public required TestPieceShape Shape { get; init; }

    /// <summary>Which minima of the standard hold for it.</summary>
    public required SampleType SampleType { get; init; }

    /// <summary>Relevant wall of the castings, mm.</summary>
    public required double WallMm { get; init; }

    /// <summary>The castings that it speaks for.</summary>
    public required string TestUnit { get; init; }

    /// <summary>Labels of the moulds of those castings, one a line; null where nobody said: then it speaks for all.</summary>
    public string? Moulds { get; init; }

    public bool IsWithdrawn { get; init; }
}
