using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Writing;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace MeltShop.Web.Pages.Heats;

/// <summary>The melter's card: what to load, in which order and how much; large enough for two metres, and one sheet of paper.</summary>
public sealed partial class WeighingSheet
{
    [Parameter]
    public long HeatId { get; set; }

    [Inject]
    private HeatPage Page { get; set; } = null!;

    [Inject]
    private YardPage Yard { get; set; } = null!;

    [Inject]
    private ILogger<WeighingSheet> Log { get; set; } = null!;

    [Inject]
    private IJSRuntime Browser { get; set; } = null!;

    protected override async Task<WeighingSheetView?> Read(CancellationToken ct)
    {
        if (await Page.Load(HeatId, ct) is not { } heat) return null;
        var yard = await Yard.All(ct);
        return await Task.Run(() => WeighingSheetView.Of(heat, yard, Log, ct), ct);
    }

    protected override bool Concerns(ChangeNotice change) => HeatChanges.Concern(View?.Heat, HeatId, change);

    private Task Print() => Browser.InvokeVoidAsync("print").AsTask();
}
