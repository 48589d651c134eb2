using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Reading.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>What the last metal of the ladle says against the poured window.</summary>
public sealed partial class LastMetalCard
{
    [Parameter, EditorRequired]
    public LadleContent View { get; set; } = null!;

    private TreatedLadleView Treated => View.Ladle.Treated!;

    private static int Decimals(string quantity) => Element.TryParse(quantity, out var element) ? element.Decimals : 2;
}
