using MeltShop.Operations.Storing;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Yard;

namespace MeltShop.Operations.Charging;

/// <summary>What was chosen for a plan that is kept.</summary>
public static class StoredChoice
{
    /// <summary>Null in plans of before it was kept.</summary>
    public static ChargeChoice? Of(PlanView plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Choice is { } text ? StoredJson.Value<ChargeChoice>(text) : null;
    }

    /// <summary>The yard as the plan sees it: without the bins that it leaves out.</summary>
    public static IReadOnlyList<MaterialView> Reached(PlanView plan, IReadOnlyList<MaterialView> yard) =>
        Of(plan)?.LeftOutBins is { Count: > 0 } bins ? [.. yard.Select(material => material.Without(bins))] : yard;

    public static bool IsByHand(PlanView plan) => Of(plan)?.ByHand is not null;
}
