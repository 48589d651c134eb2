using MeltShop.Web.Components.Entries;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Reading;
using MeltShop.Web.Pages.Charge;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>The last accepted correction as the melter's task: weighed in line by line, then its prediction beside the next sample.</summary>
public sealed partial class CorrectionCard
{
    private WeighingEntry entry = new();
    private string? opened;

    [Parameter, EditorRequired]
    public HeatScreen Screen { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    [Inject]
    private ShopSite Site { get; set; } = null!;

    private CorrectionTask? Latest { get; set; }

    /// <summary>The latest first.</summary>
    private IReadOnlyList<CorrectionTask> Earlier { get; set; } = [];

    protected override void OnParametersSet()
    {
        var tasks = Screen.Heat.Corrections.Where(c => !c.Origin.IsCorrected).Select(c => CorrectionTask.Of(c, Screen.Heat, Screen.Yard)).Reverse().ToList();
        (Latest, Earlier) = (tasks.FirstOrDefault(), [.. tasks.Skip(1)]);
    }

    private void Open(WeighingRow line)
    {
        (opened, entry) = (line.Code, new());
        entry.Belongs("heatId", Screen.Heat.Heat.Id);
        entry.Belongs("intoBath", 1);
        entry.Only(line.MaterialId!.Value);
    }

    private void Leave() => opened = null;
}
