using System.Globalization;
using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations;
using MeltShop.Operations.Laboratory;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Heats;

namespace MeltShop.Web.Components.Entries;

/// <summary>A check of an instrument on a reference material, or one that is put right.</summary>
public sealed class ControlSampleEntry : TypedEntry<long>
{
    public ControlSampleEntry(IEnumerable<Element> elements)
    {
        Reference = Form.Choice("referenceMaterialId", isRequired: true);
        Remarks = Form.Words("remarks");
        Corrects = Form.Choice("correctsId");
        Reason = Form.Words("reason");
        Minutes = MinutesAgo.Field(Form);
        Burns = new SampleDraft(Form, elements);
    }

    public override string Operation => nameof(RecordControlSample);

    public TextEntry Reference { get; }

    public TextEntry Remarks { get; }

    /// <summary>The check that was wrong; empty for a new one.</summary>
    public TextEntry Corrects { get; }

    public TextEntry Reason { get; }

    public QuantityEntry Minutes { get; }

    public SampleDraft Burns { get; }

    public override string? DraftSubject => Operations.Drafts.DraftSubject.ControlSample(Id("instrumentId"));

    /// <inheritdoc/>
    public override FieldEntry? Field(string path) => Burns.CellAt(path) ?? base.Field(path);

    protected override IEnumerable<Finding> Check() => Burns.Check();

    /// <summary>A new check was made so long ago; one that is put right was made when the wrong one was, unless somebody says otherwise.</summary>
    protected override Task<Outcome<long>> Run(IServiceProvider services, EntryMade made)
    {
        var burned = Minutes.Before(made.ObservedAt);
        var corrects = Chosen(Corrects);
        return services.GetRequiredService<RecordControlSample>().Run(made.By, new(
            made.Key, corrects is null ? burned : made.ObservedAt, Id("instrumentId"), Chosen(Reference)!.Value, Burns.Inputs(), Remarks.Value, corrects, Reason.Value,
            Minutes.Value is null ? null : burned) { DraftSubject = DraftSubject });
    }

    private static long? Chosen(TextEntry choice) =>
        choice.Value is not { } text ? null : long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var id) ? id : throw new BadHttpRequestException($"{choice.Path} is no number.");
}
