using MeltShop.Metallurgy;
using MeltShop.Operations.Charging;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Starts a heat from a kept plan: that gives a number for good, so it is asked once more.</summary>
public sealed partial class StartPlan
{
    private readonly EntryForm start = new();
    private readonly Drawn<string> yes;
    private bool isAsking, isStarting;

    public StartPlan() => yes = new(Start);

    /// <summary>Which charge it is, the same as long as it stays the same: one that was drawn since is looked at first.</summary>
    [Parameter, EditorRequired]
    public string Plan { get; set; } = "";

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

    private async Task Start(string seen)
    {
        if (isStarting) return;
        if (IsBarred || seen != Plan)
        {
            start.Find([new Finding("", Drawn<string>.Code)]);
            return;
        }

        isStarting = true;
        try
        {
            var place = new Uri(Addresses.Uri).AbsolutePath;
            if (await Kept() is not { } planId) return;
            var outcome = await HandingIn.Send(start, made => Operation.Run(made.By, new(made.Key, made.ObservedAt, planId)));
            var isHere = new Uri(Addresses.Uri).AbsolutePath == place; // whoever has gone elsewhere is not called back
            if (outcome?.Succeeded == true && isHere) Addresses.NavigateTo($"/heats/{outcome.Value.HeatId}");
        }
        finally
        {
            isStarting = false;
        }
    }
}
