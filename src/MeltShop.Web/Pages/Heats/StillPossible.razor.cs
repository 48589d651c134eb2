using MeltShop.Charging.Problems;
using MeltShop.Charging.WeighingIn;
using MeltShop.Metallurgy.Route;
using MeltShop.Web.Components.Limits;
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
        string Show(double row) => QuantityText.Show(quantity, WindowQuantity.Told(quantity, row));
        return (least, most) switch
        {
            (null, null) => Text["Unsaid"],
            ({ } low, null) => Text["From", Show(low)],
            (null, { } high) => Text["UpTo", Show(high)],
            ({ } low, { } high) => Text["FromTo", Show(low), Show(high)],
        };
    }
}
