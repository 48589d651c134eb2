using MeltShop.Operations.Storing;
using MeltShop.Records.Reading.Charge;

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

    public static bool IsByHand(PlanView plan) => Of(plan)?.ByHand is not null;
}
