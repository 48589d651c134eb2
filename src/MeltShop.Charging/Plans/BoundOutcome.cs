namespace MeltShop.Charging.Plans;

/// <summary>A bound on a mass, a share or a room that the plan sits on, and what moving it changes.</summary>
/// <param name="Kind">What is bounded: never a <see cref="MissKind.Quantity"/>, of which the limits tell.</param>
/// <param name="Name">The material, the group, the room; empty for the masses of the whole.</param>
/// <param name="Binding">The lower bound, the upper one, or both where they leave one value: then they are moved together.</param>
/// <param name="Bound">Where it stands: kg, for a share %, for a room m³.</param>
/// <param name="RaisedCost">
/// Right-hand derivative of the total cost (of all that is minimised, where there are wishes) for each kg, point of a share or m³ by which the bound is raised; null where raising it is
/// impossible.
/// </param>
/// <param name="LoweredCost">The same for lowering it: where the plan is degenerate the two are no opposites.</param>
public sealed record BoundOutcome(MissKind Kind, string Name, BindingBound Binding, double Bound, double? RaisedCost, double? LoweredCost);
