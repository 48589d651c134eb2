using MeltShop.Records.Reading.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>So much was poured in from other ladles that the freeboard is gone.</summary>
public sealed partial class OverfillCard
{
    [Parameter, EditorRequired]
    public LadleView View { get; set; } = null!;

    private TreatedLadleView Treated => View.Treated!;

    private double LeftKg => Treated.InKg - View.Pouring!.OutKg;

    private double Over => Treated.CameKg > 0 ? LeftKg - Treated.FillLimitKg : 0;
}
