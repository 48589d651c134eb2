using MeltShop.Operations.Charging;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Starts a heat from a kept plan: that gives a number for good, so it is asked once more.</summary>
public sealed partial class StartPlan
{
    private readonly EntryForm start = new();
    private bool isAsking;

    [Parameter, EditorRequired]
    public string Grade { get; set; } = "";

    /// <summary>Liquid that the plan makes, kg.</summary>
    [Parameter, EditorRequired]
    public double LiquidKg { get; set; }

    [Parameter, EditorRequired]
    public string Furnace { get; set; } = "";

    /// <summary>Keeps the plan where it is not kept yet, and gives its number; null where it was refused.</summary>
    [Parameter, EditorRequired]
    public Func<Task<long?>> Kept { get; set; } = null!;

    /// <summary>Not now: the plan is being drawn anew, or kept.</summary>
    [Parameter]
    public bool IsBarred { get; set; }

    /// <summary>The plan was made from other figures than there are now, or this program would find another one: who starts it is told.</summary>
    [Parameter]
    public bool IsOutOfDate { get; set; }

    /// <summary>What else can be done with the plan.</summary>
    [Parameter]
    public RenderFragment? ChildContent { get; set; }

    [Inject]
    private StartHeat Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    [Inject]
    private NavigationManager Addresses { get; set; } = null!;

    private void Ask() => isAsking = true;

    private void NotYet() => isAsking = false;

    private async Task Start()
    {
        if (await Kept() is not { } planId) return;
        var outcome = await HandingIn.Send(start, made => Operation.Run(made.By, new(made.Key, made.ObservedAt, planId)));
        if (outcome?.Succeeded == true) Addresses.NavigateTo($"/heats/{outcome.Value.HeatId}");
    }
}
