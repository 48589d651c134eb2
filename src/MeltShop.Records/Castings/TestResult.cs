using MeltShop.Metallurgy.Grades;
using MeltShop.Records.Keeping;

namespace MeltShop.Records.Castings;

/// <summary>One property of a test piece as it was tested.</summary>
public sealed class TestResult : Fact
{
    public required long TestPieceId { get; init; }
    public required CastProperty Property { get; init; }

    /// <summary>In the unit of the property.</summary>
    public required double Value { get; init; }

    /// <summary>How it was tested: a standard, an instrument, a magnification.</summary>
    public string? Method { get; init; }
}
