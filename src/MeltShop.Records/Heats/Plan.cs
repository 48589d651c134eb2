using MeltShop.Records.Keeping;

namespace MeltShop.Records.Heats;

/// <summary>A charge plan with all that it used, so that it gives the same numbers a year later.</summary>
public sealed class Plan : Fact
{
    public required long FurnaceId { get; init; }
    public required long GradeId { get; init; }
    public required double MeltKg { get; init; }

    /// <summary>The problem as JSON: heel, materials with analyses and prices, limits.</summary>
    public required string Problem { get; init; }

    /// <summary>The answer as JSON.</summary>
    public required string Answer { get; init; }

    /// <summary>What a person chose, as JSON: whether the charge was made by hand, which iron was the target; null in plans of before.</summary>
    public string? Choice { get; init; }

    /// <summary>Versions of formulas and data that it used.</summary>
    public required string Versions { get; init; }

    public required decimal TotalCost { get; init; }
}
