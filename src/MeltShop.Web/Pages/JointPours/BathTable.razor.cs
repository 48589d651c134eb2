using MeltShop.Metallurgy.Pouring;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.JointPours;

/// <summary>The bath at its start and at each topping up, and until when it may be poured.</summary>
public sealed partial class BathTable
{
    [Parameter, EditorRequired]
    public IReadOnlyList<BathMoment> Moments { get; set; } = [];

    /// <summary>The same as bands, one for each moment.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<BathBand> Bands { get; set; } = [];

    [Parameter, EditorRequired]
    public double FloorPercent { get; set; }

    /// <summary>The next topping up comes after the pour had to stop.</summary>
    private bool IsTooLate(int n) => n + 1 < Moments.Count && Moments[n + 1].Minute > Moments[n].StopAt;

    /// <summary>It may come too late: at the worst end of the band the pour had to stop before.</summary>
    private bool IsMaybeTooLate(int n) => n + 1 < Moments.Count && Moments[n + 1].Minute > Bands[n].LeastStopAt;

    private string Shown(MagnesiumRange band) => Text["BathBand", NumberText.Show(band.LeastPercent, 4), NumberText.Show(band.MostPercent, 4)];
}
