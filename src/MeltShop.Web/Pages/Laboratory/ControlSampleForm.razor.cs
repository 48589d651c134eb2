using System.Globalization;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Heats;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Laboratory;

/// <summary>A check of the instrument, in the grid of every sample; or a check that is put right, with a reason.</summary>
public sealed partial class ControlSampleForm
{
    /// <summary>Older ones are put right by nobody.</summary>
    private const int Correctable = 100;

    private ControlSampleEntry? entry;
    private bool isSaved;

    [Parameter, EditorRequired]
    public InstrumentView Instrument { get; set; } = null!;

    [Parameter, EditorRequired]
    public IReadOnlyList<ReferenceView> References { get; set; } = [];

    [Parameter, EditorRequired]
    public IReadOnlyList<ControlSampleView> Samples { get; set; } = [];

    [Parameter]
    public EventCallback Saved { get; set; }

    private IEnumerable<Choice> Choices => References.Where(one => one.IsActive || entry?.Corrects.Value is not null).Select(one => new Choice(Name(one.Id), one.Name));

    private IEnumerable<Choice> Earlier => Samples.TakeLast(Correctable).Reverse().Select(one => new Choice(Name(one.Id), Site.DayAndTime(one.Origin.ObservedAt)));

    private void Open()
    {
        isSaved = false;
        entry = new(References.SelectMany(one => one.Values).Select(value => value.Element).Distinct().Order());
        entry.Belongs("instrumentId", Instrument.Id);
        if (References.Count == 1) entry.Reference.Showing(Name(References[0].Id));
    }

    /// <summary>What stands there of the check that is put right is offered, where nothing was typed.</summary>
    private void Choose()
    {
        if (Samples.FirstOrDefault(one => Name(one.Id) == entry!.Corrects.Value) is not { } wrong) return;
        if (entry!.Reference.Value is null) entry.Reference.Showing(Name(wrong.ReferenceMaterialId));
        if (entry.Remarks.Value is null) entry.Remarks.Showing(wrong.Remarks);
    }

    private async Task Accept()
    {
        (entry, isSaved) = (null, true);
        await Saved.InvokeAsync();
    }

    private string Name(string path) => SampleDraft.Place(path) is { } cell ? $"{Heats["CellOf", cell.Burn + 1, cell.Symbol]}" : Text[path switch
    {
        "referenceMaterialId" => "Reference",
        "observedAt" => "CheckedAgo",
        "correctsId" => "Corrects",
        "reason" => "Reason",
        _ => "Remarks",
    }];

    private static string Name(long id) => id.ToString(CultureInfo.InvariantCulture);
}
