using MeltShop.Operations;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Laboratory;

/// <summary>Takes an instrument into the shop, or says anew what it measures and how wide its guard bands are.</summary>
public sealed partial class InstrumentForm
{
    private readonly EntryForm form = new();
    private readonly TextEntry code, name, kind, sends, use, source;
    private readonly ElementRows rows;
    private readonly SeenVersion seen = new();
    private bool isOpen;

    public InstrumentForm()
    {
        (code, name, kind) = (form.Words("code"), form.Words("name", isRequired: true), form.Choice("kind").Showing(nameof(InstrumentKind.Spark)));
        (sends, use, source) = (form.Choice("sendsMeanOnly").Showing(bool.FalseString), form.Choice("isActive").Showing(bool.TrueString), form.Words("figuresSource"));
        rows = new(form, "elements", 10, firstIsNeeded: false);
    }

    /// <summary>The one to be said anew; null for a new one.</summary>
    [Parameter]
    public InstrumentView? Instrument { get; set; }

    [Parameter]
    public EventCallback Saved { get; set; }

    [Inject]
    private AddInstrument Add { get; set; } = null!;

    [Inject]
    private SetInstrument Set { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private IEnumerable<Choice> Kinds => Enum.GetNames<InstrumentKind>().Select(one => new Choice(one, Text["Kind." + one]));

    private IEnumerable<Choice> SendsChoices => [new(bool.FalseString, Text["SendsBurns"]), new(bool.TrueString, Text["SendsMean"])];

    private IEnumerable<Choice> UseChoices => [new(bool.TrueString, Text["InUse"]), new(bool.FalseString, Text["OutOfUse"])];

    private IReadOnlyList<InstrumentElementInput> Elements => [.. rows.Rows.Select(row => new InstrumentElementInput(row.Symbol.Value!, row.First.Value, row.Second.Value))];

    protected override void OnParametersSet()
    {
        if (Instrument is { } instrument) seen.Arrived(instrument.Version);
    }

    private void Open()
    {
        isOpen = true;
        form.Open();
        rows.Clear();
        if (Instrument is not { } instrument)
        {
            rows.Add();
            return;
        }

        seen.Open(instrument.Version);
        name.Showing(instrument.Name);
        use.Showing(instrument.IsActive.ToString());
        source.Showing(instrument.FiguresSource);
        foreach (var element in instrument.Elements) rows.Add(element.Element.Symbol, element.Repeatability, element.GuardFactor);
    }

    private async Task Save()
    {
        var done = Instrument is { } instrument
            ? Done(await HandingIn.Send(form, made => Set.Run(made.By, new(
                made.Key, made.ObservedAt, instrument.Id, seen.Value, name.Value!, bool.Parse(use.Value!), Elements, source.Value)), rows.Twice))
            : Done(await HandingIn.Send(form, made => Add.Run(made.By, new(
                made.Key, made.ObservedAt, code.Value ?? "", name.Value!, Enum.Parse<InstrumentKind>(kind.Value!), bool.Parse(sends.Value!), Elements, source.Value)), rows.Twice));
        if (!done) return;
        isOpen = false;
        await Saved.InvokeAsync();
    }

    private bool Done<TResult>(Outcome<TResult>? outcome)
    {
        if (outcome?.IsStale() == true) seen.Outdated();
        return outcome?.Succeeded == true;
    }
}
