using System.Globalization;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Heats;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Laboratory;

/// <summary>A check of the instrument, in the grid of every sample; or a check that is put right, with a reason.</summary>
public sealed partial class ControlSampleForm
{
    /// <summary>Older ones are put right by nobody.</summary>
    private const int Correctable = 100;

    private EntryForm form = new();
    private TextEntry reference = null!, remarks = null!, corrects = null!, reason = null!;
    private QuantityEntry minutes = null!;
    private SampleDraft burns = null!;
    private bool isOpen, isSaved;

    [Parameter, EditorRequired]
    public InstrumentView Instrument { get; set; } = null!;

    [Parameter, EditorRequired]
    public IReadOnlyList<ReferenceView> References { get; set; } = [];

    [Parameter, EditorRequired]
    public IReadOnlyList<ControlSampleView> Samples { get; set; } = [];

    [Parameter]
    public EventCallback Saved { get; set; }

    [Inject]
    private RecordControlSample Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private IEnumerable<Choice> Choices => References.Where(one => one.IsActive || corrects.Value is not null).Select(one => new Choice(Name(one.Id), one.Name));

    private IEnumerable<Choice> Earlier => Samples.TakeLast(Correctable).Reverse().Select(one => new Choice(Name(one.Id), Site.DayAndTime(one.Origin.ObservedAt)));

    private void Open()
    {
        (isOpen, isSaved, form) = (true, false, new());
        (reference, remarks, corrects, reason) = (form.Choice("referenceMaterialId", isRequired: true), form.Words("remarks"), form.Choice("correctsId"), form.Words("reason"));
        minutes = MinutesAgo.Field(form);
        burns = new(form, References.SelectMany(one => one.Values).Select(value => value.Element).Distinct().Order());
        if (References.Count == 1) reference.Showing(Name(References[0].Id));
    }

    /// <summary>What stands there of the check that is put right is offered, where nothing was typed.</summary>
    private void Choose()
    {
        if (Samples.FirstOrDefault(one => one.Id == Id(corrects)) is not { } wrong) return;
        if (reference.Value is null) reference.Showing(Name(wrong.ReferenceMaterialId));
        if (remarks.Value is null) remarks.Showing(wrong.Remarks);
    }

    private async Task Save()
    {
        var outcome = await HandingIn.Send(
            form,
            made => Operation.Run(made.By, new(
                made.Key, Id(corrects) is null ? minutes.Before(made.ObservedAt) : made.ObservedAt, Instrument.Id, Id(reference)!.Value, burns.Inputs(), remarks.Value, Id(corrects),
                reason.Value, minutes.Value is null ? null : minutes.Before(made.ObservedAt))),
            burns.Check);
        if (outcome?.Succeeded != true) return;
        (isOpen, isSaved) = (false, true);
        await Saved.InvokeAsync();
    }

    private static string Name(long id) => id.ToString(CultureInfo.InvariantCulture);

    private static long? Id(TextEntry entry) => entry.Value is { } text ? long.Parse(text, CultureInfo.InvariantCulture) : null;
}
