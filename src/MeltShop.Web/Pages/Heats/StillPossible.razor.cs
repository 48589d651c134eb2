using MeltShop.Charging.Problems;
using MeltShop.Charging.WeighingIn;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Charge;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>How far what is still to come can move each quantity, beside what was asked: for the metallurgist.</summary>
public sealed partial class StillPossible
{
    [Parameter, EditorRequired]
    public IReadOnlyList<ReachableRange> Ranges { get; set; } = [];

    /// <summary>In the order of the ranges.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<QuantityLimit> Asked { get; set; } = [];

    private string Range(string quantity, double? least, double? most)
    {
        var decimals = LimitRow.DecimalsOf(quantity);
        return (least, most) switch
        {
            (null, null) => Text["Unsaid"],
            ({ } low, null) => Text["From", NumberText.Show(low, decimals)],
            (null, { } high) => Text["UpTo", NumberText.Show(high, decimals)],
            ({ } low, { } high) => Text["FromTo", NumberText.Show(low, decimals), NumberText.Show(high, decimals)],
        };
    }
}
