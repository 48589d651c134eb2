using MeltShop.Operations.Ladles;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Floor;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Writing;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Floor;

/// <summary>The first page: what is in the furnaces, which ladles run, which castings wait.</summary>
public sealed partial class ShopFloor
{
    private static readonly TimeSpan Tick = TimeSpan.FromSeconds(20);
    private ITimer? timer;

    [Inject]
    private FloorPage Page { get; set; } = null!;

    [Inject]
    private GradesPage Grades { get; set; } = null!;

    private DateTimeOffset Now => Clock.GetUtcNow();

    /// <summary>A clock runs: the ladles stand first, where they are seen without a scroll.</summary>
    private bool IsPouring => View!.Floor.OpenLadles.Any(l => l.State is not TreatedLadleState.Prepared);

    /// <summary>By whichever of its limits was reached first.</summary>
    private DateTimeOffset? OverSince(FloorLadle ladle) => ladle.Times is { } times ? PouringLimits.ReachedBefore(times, Now)?.StopAt : null;

    protected override async Task<FloorContent?> Read(CancellationToken ct)
    {
        var floor = await Page.Load(ct);
        var grades = await Grades.Load(ct);
        return new(floor, grades.Grades.ToDictionary(g => g.Code));
    }

    protected override bool IsEmpty(FloorContent view) => view.Floor.Furnaces.Count == 0;

    protected override bool Concerns(ChangeNotice change) => change.Kind
        is ChangeKind.Heat or ChangeKind.Sample or ChangeKind.TreatedLadle or ChangeKind.Furnace or ChangeKind.Site or ChangeKind.Grade or ChangeKind.Ladle;

    /// <summary>Minutes go on while nothing changes.</summary>
    protected override void OnAfterRender(bool firstRender)
    {
        if (firstRender) timer = Clock.CreateTimer(_ => InvokeAsync(StateHasChanged), null, Tick, Tick);
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing) timer?.Dispose();
        base.Dispose(disposing);
    }

    private GradeView? Grade(string? code) => code is null ? null : View!.Grades.GetValueOrDefault(code);
}
