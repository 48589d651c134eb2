using MeltShop.Metallurgy.Statistics;

namespace MeltShop.Charging.Plans;

/// <summary>How a plan ended.</summary>
public enum PlanStatus
{
    /// <summary>The cheapest plan was found and proven.</summary>
    Optimal,

    /// <summary>No plan meets all rows; the conflicts say which of them clash.</summary>
    Infeasible,

    /// <summary>The search came to no end (see <see cref="SearchEnd"/>); what is shown is the best found, without proof.</summary>
    TimeLimit,
}

/// <summary>Which bound of a limit the plan sits on, the margin and the scatter margin included.</summary>
public enum BindingBound
{
    /// <summary>Neither.</summary>
    None,

    /// <summary>The lower one.</summary>
    Min,

    /// <summary>The upper one.</summary>
    Max,

    /// <summary>Both, where they leave no room.</summary>
    Both,
}

/// <summary>A material of the plan.</summary>
/// <param name="Code">The material.</param>
/// <param name="Kg">Weighed mass, kg.</param>
/// <param name="Percent">Share of the total weighed mass, %.</param>
public sealed record PlanLine(string Code, double Kg, double Percent);

/// <summary>Where the plan sits on a limit.</summary>
/// <param name="Quantity">Name of the quantity.</param>
/// <param name="Value">Value in the melt.</param>
/// <param name="Min">The bound asked for, without margins; or null.</param>
/// <param name="Max">The bound asked for, without margins; or null.</param>
/// <param name="Binding">The bound that the plan sits on.</param>
/// <param name="MarginalCost">Change of the total cost (of all that is minimised, where there are wishes) for +0.01 on the bound; null with pieces or where raising it is impossible.</param>
public sealed record LimitOutcome(string Quantity, double Value, double? Min, double? Max, BindingBound Binding, double? MarginalCost)
{
    /// <summary>Standard deviation of the value by the scatter of the analyses, in its unit; 0 where none is known.</summary>
    public double StandardDeviation { get; init; }

    /// <summary>
    /// Change of the total cost for −0.01 on the bound; null with pieces, where lowering it is impossible, and where the plan was not explained. Where the plan is
    /// degenerate it is not the opposite of <see cref="MarginalCost"/>.
    /// </summary>
    public double? LoweredCost { get; init; }

    /// <summary>Share of heats that end below the lower bound and above the upper one by the scatter of the analyses, 0 to 1; 0 where no scatter is known.</summary>
    public (double Below, double Above) Outside() => (Beyond(Min - Value), Beyond(Value - Max));

    /// <summary>
    /// Whether the value is inside and a heat of it may well not be: more than <see cref="MostOutside"/> of them end beyond one of the bounds. A plan of that
    /// much confidence is never so.
    /// </summary>
    public bool IsTooCloseToTell() =>
        !(Value < Min - Tolerance) && !(Value > Max + Tolerance) && Outside() is var (below, above) && Math.Max(below, above) > MostOutside + Tolerance;

    /// <summary>Share of heats beyond a bound from which on a plan is not called inside it: one in twenty (a usual level of significance, no source).</summary>
    public const double MostOutside = 0.05;

    /// <summary>What solving leaves over of a value that sits on its bound.</summary>
    private const double Tolerance = 1e-6;

    private double Beyond(double? distance) => StandardDeviation > 0 && distance is { } away ? Normal.Cumulative(away / StandardDeviation) : 0;
}

/// <summary>Why a material is in or out.</summary>
/// <param name="Code">The material.</param>
/// <param name="Kg">Weighed mass in the plan, kg.</param>
/// <param name="PriceToEnterPerTonne">Price at which a left-out material would come in; null with pieces or where it cannot come in.</param>
public sealed record MaterialOutcome(string Code, double Kg, double? PriceToEnterPerTonne);

/// <summary>A member of an irreducible set of bounds that cannot be met together.</summary>
/// <param name="Quantity">Name of the quantity, or <c>meltKg</c> where masses and shares alone are impossible.</param>
/// <param name="Bound"><c>min</c> or <c>max</c>; null for <c>meltKg</c>.</param>
/// <param name="Limit">The bound that clashes.</param>
/// <param name="Nearest">The value that can be reached with the other members held and limits outside the set ignored; null where none.</param>
public sealed record Conflict(string Quantity, string? Bound, double? Limit, double? Nearest)
{
    /// <summary>How far inside of the bound the plan has to end; not counted in the bound.</summary>
    public double Margin { get; init; }

    /// <inheritdoc cref="Problems.QuantityLimit.HeldMargin"/>
    public double HeldMargin { get; init; }

    /// <summary>Where masses and shares are impossible: the groups without any one of which there would be a charge.</summary>
    public IReadOnlyList<string> Groups { get; init; } = [];

    /// <summary>The rooms likewise.</summary>
    public IReadOnlyList<string> Rooms { get; init; } = [];
}
