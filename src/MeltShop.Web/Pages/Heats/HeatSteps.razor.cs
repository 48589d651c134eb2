using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Heats;
using MeltShop.Web.Components.Ribbon;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>The states of a heat as steps of its ribbon, with the minutes that each took or has taken so far: they go on while nothing changes.</summary>
public sealed partial class HeatSteps : IDisposable
{
    private static readonly TimeSpan Tick = TimeSpan.FromSeconds(20);
    private ITimer? timer;

    [Parameter, EditorRequired]
    public HeatState State { get; set; }

    [Parameter, EditorRequired]
    public DateTimeOffset StartedAt { get; set; }

    /// <summary>When it came into its states, those in force.</summary>
    [Parameter, EditorRequired]
    public IEnumerable<StepTime> Times { get; set; } = [];

    /// <summary>Shown as it was known then; null for now.</summary>
    [Parameter]
    public DateTimeOffset? Until { get; set; }

    [Inject]
    private TimeProvider Clock { get; set; } = null!;

    /// <summary>A heat that was called off ends there, whatever else it would have gone through.</summary>
    private IReadOnlyList<HeatState> Steps => State is HeatState.Cancelled
        ? [HeatState.Cancelled]
        : [HeatState.Charging, HeatState.Bath, HeatState.Tapping, HeatState.Closed];

    private IReadOnlyList<RibbonStep> Ribbon
    {
        get
        {
            var minutes = StepTimes.Minutes(StartedAt, Times, Until ?? Clock.GetUtcNow());
            return [.. Steps.Select(step => new RibbonStep(Text["State." + step].Value, Standing(step), minutes.TryGetValue(step, out var taken) ? taken : null))];
        }
    }

    protected override void OnAfterRender(bool firstRender)
    {
        if (firstRender) timer = Clock.CreateTimer(_ => InvokeAsync(StateHasChanged), null, Tick, Tick);
    }

    public void Dispose() => timer?.Dispose();

    private RibbonStanding Standing(HeatState step) => step == State ? RibbonStanding.Now : step < State ? RibbonStanding.Done : RibbonStanding.Later;
}
