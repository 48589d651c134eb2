using MeltShop.Charging.Plans;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>No charge keeps all limits: which of them clash, and how near each can be reached while the others hold.</summary>
public sealed partial class PlanClashes
{
    [Parameter, EditorRequired]
    public PlannedCharge Planned { get; set; } = null!;

    private string Words(Conflict clash)
    {
        if (clash.Bound is null)
        {
            return clash.Nearest is { } mass
                ? Text["ClashMass", MassText.Show(clash.Limit ?? 0), MassText.Show(mass)]
                : Text["ClashMassUnknown", MassText.Show(clash.Limit ?? 0)];
        }

        var decimals = LimitRow.DecimalsOf(clash.Quantity);
        var limit = NumberText.Show(clash.Limit ?? 0, decimals);
        var bound = Text[clash.Bound == "min" ? "Least" : "Most"].Value;
        return clash.Nearest is { } nearest
            ? Text["Clash", clash.Quantity, bound, limit, NumberText.ShowBeside(nearest, decimals, clash.Limit)]
            : Text["ClashUnknown", clash.Quantity, bound, limit];
    }
}
