using MeltShop.Records.Keeping;

namespace MeltShop.Records.Heats;

/// <summary>An accepted proposal to bring a bath into its window, with all that it used: a task for the melter until it is weighed in.</summary>
public sealed class BathCorrection : Fact
{
    public required long HeatId { get; init; }

    /// <summary>The sample that it corrects.</summary>
    public required long SampleId { get; init; }

    /// <summary>What was asked to be least: cost, kilograms or cooling.</summary>
    public required string Goal { get; init; }

    /// <summary>The problem as JSON: bath, temperature, additions, limits.</summary>
    public required string Problem { get; init; }

    /// <summary>The answer as JSON.</summary>
    public required string Answer { get; init; }

    /// <summary>Versions of formulas and data that it used.</summary>
    public required string Versions { get; init; }

    /// <summary>Cost of additions and tapping off at the yard's prices.</summary>
    public required decimal TotalCost { get; init; }
}
