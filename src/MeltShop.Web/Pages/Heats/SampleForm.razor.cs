using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Grades;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Heats;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>A coin from the bath with its burns, made for the keyboard.</summary>
public sealed partial class SampleForm
{
    /// <summary>More sparks a coin has no room for.</summary>
    private const int MostBurns = 20;

    private readonly EntryForm form = new();
    private readonly TextEntry kind;
    private readonly TextEntry coin;
    private readonly TextEntry remarks;
    private readonly TextEntry another;
    private readonly QuantityEntry minutes;
    private SampleDraft draft = null!;

    public SampleForm()
    {
        kind = form.Choice("kind", isRequired: true).Showing(nameof(SampleKind.Bath));
        coin = form.Words("coinNumber");
        remarks = form.Words("remarks");
        another = new EntryForm().Words("element", judge: Judge);
        minutes = MinutesAgo.Field(form);
    }

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter]
    public EventCallback Saved { get; set; }

    [Parameter]
    public EventCallback Left { get; set; }

    [Inject]
    private RecordSample Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private IEnumerable<Choice> Kinds =>
        SampleKinds.OfTheBath.Select(name => new Choice(name.ToString(), Text["Kind." + name]));

    private IEnumerable<Finding> Unplaced => form.Unplaced.Where(finding => !finding.Path.StartsWith("burns[", StringComparison.Ordinal));

    protected override void OnInitialized()
    {
        var limited = Heat.Grade.At(WindowStage.Furnace).Select(window => Element.TryParse(window.Quantity, out var element) ? element : null).OfType<Element>();
        draft = new SampleDraft(form, limited.Union([Element.C, Element.Si, Element.Mn, Element.P, Element.S]).Order());
    }

    private static string? Judge(string symbol) =>
        !Element.TryParse(symbol, out var element) ? "element.unknown" : element == Element.Fe ? "analysis.iron" : null;

    private void AddElement()
    {
        if (another.Finding is not null || !Element.TryParse(another.Value, out var element)) return;
        draft.Add(element);
        another.Showing(null);
    }

    private async Task Save()
    {
        var outcome = await HandingIn.Send(
            form,
            made => Operation.Run(made.By, new(
                made.Key, minutes.Before(made.ObservedAt), Heat.Heat.Id, null, Enum.Parse<SampleKind>(kind.Value!), draft.Inputs(), coin.Value, remarks.Value)),
            draft.Check);
        if (outcome?.Succeeded == true) await Saved.InvokeAsync();
    }
}
