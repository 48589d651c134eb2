using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Solving;

/// <summary>What a solve came back with.</summary>
/// <param name="Status">How it ended.</param>
/// <param name="Solved">
/// The linear program that was solved in the end: planes that stand for scatter are among its rows, and columns that they needed come after
/// those of the program that was asked for.
/// </param>
/// <param name="Values">Values of its columns; empty where there are none.</param>
/// <param name="Duals">Change of the objective for +1 on each row's right-hand side; empty for whole pieces.</param>
/// <param name="ReducedCosts">Change of the objective for +1 on each column; empty for whole pieces.</param>
internal sealed record Solution(PlanStatus Status, LinearProgram Solved, double[] Values, double[] Duals, double[] ReducedCosts)
{
    /// <summary>How the search ended.</summary>
    public SearchEnd End { get; init; } = Status == PlanStatus.TimeLimit ? SearchEnd.OutOfTime : SearchEnd.Proven;

    /// <summary>No solution costs less than this, in the program's objective; null where it is not known.</summary>
    public double? Bound { get; init; }

    /// <summary>Where no whole numbers were found: the values without that condition; null otherwise, and where they are not known either.</summary>
    public double[]? Continuous { get; init; }

    /// <summary>Whether the duals and reduced costs are known to be the only ones; where false they may be all the same.</summary>
    public bool PricesAreUnique { get; init; }

    /// <summary>Linear programs that it took, the first without planes; 0 where they are not counted.</summary>
    public int Rounds { get; init; }

    public bool IsOptimal => Status == PlanStatus.Optimal;

    public static Solution Without(PlanStatus status) => new(status, new([], []), [], [], []);
}
