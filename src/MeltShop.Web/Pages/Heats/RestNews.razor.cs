using MeltShop.Charging.Problems;
using MeltShop.Operations.Charging;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Charge;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>What became of the target since something was weighed in: kept, tight, or out of reach and what does the least harm.</summary>
public sealed partial class RestNews
{
    [Parameter, EditorRequired]
    public RestOfCharge? Rest { get; set; }

    /// <summary>What was asked before anything was weighed.</summary>
    [Parameter, EditorRequired]
    public ChargeProblem Asked { get; set; } = null!;

    [Parameter, EditorRequired]
    public double CapacityKg { get; set; }

    [Parameter, EditorRequired]
    public bool HasFailed { get; set; }

    /// <summary>Words for a liquid mass that is not the one wanted; null where it is.</summary>
    private string? MassWords =>
        Rest!.TooMuchKg(Asked) > 0 ? Mass("TooMuch") : Rest.Plan.LiquidKg < Asked.MeltKg * (1 - 1e-6) ? Mass("TooLittle") : null;

    private string Mass(string key) => Text[key, MassText.Show(Rest!.Plan.LiquidKg), MassText.Show(Asked.MeltKg)];

    private string Words(MissedLimit miss)
    {
        var decimals = LimitRow.DecimalsOf(miss.Quantity);
        return Text[miss.IsMost ? "OverMost" : "UnderLeast", miss.Quantity, NumberText.ShowBeside(miss.Value, decimals, miss.Limit), NumberText.Show(miss.Limit, decimals)];
    }
}
