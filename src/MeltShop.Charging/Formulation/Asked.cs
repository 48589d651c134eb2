using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Formulation;

/// <summary>What a row of mass, share or room was asked for.</summary>
/// <param name="Kind">What is bounded.</param>
/// <param name="Name">The material, the group, the room; empty for the masses of the whole.</param>
/// <param name="Least">The lower bound in its own unit (kg, %, m³); null where there is none.</param>
/// <param name="Most">The upper bound; null where there is none, or where more than it is weighed in already and stands.</param>
/// <param name="ShiftPerUnit">How far the right-hand side moves for +1 on the bound; of a share, for each weighed kilogram.</param>
internal sealed record Asked(MissKind Kind, string Name, double? Least, double? Most, double ShiftPerUnit)
{
    public bool IsShare => Kind is MissKind.MaterialPercent or MissKind.GroupPercent;
}
