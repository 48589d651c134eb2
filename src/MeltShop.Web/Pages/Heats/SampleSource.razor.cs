using System.Globalization;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>What measured a coin, and how it broke.</summary>
public sealed partial class SampleSource
{
    private IReadOnlyList<InstrumentView> instruments = [];

    [Parameter, EditorRequired]
    public SampleEntry Entry { get; set; } = null!;

    /// <summary>Another instrument may send a mean instead of burns: the form has to draw itself anew.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private InstrumentsPage Instruments { get; set; } = null!;

    private IEnumerable<Choice> Choices => instruments.Select(instrument => new Choice(Name(instrument), instrument.Name));

    private IEnumerable<Choice> Fractures => [new(SampleEntry.White, Text["Fracture.White"]), new(SampleEntry.Grey, Text["Fracture.Grey"])];

    private string? Help => Entry.IsMeanOnly ? Text["MeanOnlyHelp"].Value : null;

    protected override async Task OnInitializedAsync()
    {
        instruments = [.. (await Instruments.Load(CancellationToken.None)).Where(instrument => instrument.IsActive)];
        // The shop's only one stands there at once; whoever used another chooses it.
        if (instruments.Count == 1 && Entry.Instrument.Value is null) Entry.Instrument.Showing(Name(instruments[0]));
        await Chosen();
    }

    private Task Chosen()
    {
        Entry.Belongs("meanOnly", instruments.FirstOrDefault(instrument => Name(instrument) == Entry.Instrument.Value)?.SendsMeanOnly == true);
        return Changed.InvokeAsync();
    }

    private static string Name(InstrumentView instrument) => instrument.Id.ToString(CultureInfo.InvariantCulture);
}
