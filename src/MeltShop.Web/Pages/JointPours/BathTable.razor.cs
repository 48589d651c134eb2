using MeltShop.Metallurgy.Pouring;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.JointPours;

/// <summary>The bath at its start and at each topping up, and until when it may be poured.</summary>
public sealed partial class BathTable
{
    [Parameter, EditorRequired]
    public IReadOnlyList<BathMoment> Moments { get; set; } = [];

    [Parameter, EditorRequired]
    public double FloorPercent { get; set; }

    /// <summary>The next topping up comes after the pour had to stop.</summary>
    private bool IsTooLate(int n) => n + 1 < Moments.Count && Moments[n + 1].Minute > Moments[n].StopAt;
}
