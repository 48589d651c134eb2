using MeltShop.Operations.Yard;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Yard;

/// <summary>A better analysis, typed element by element; the one before it stays in the records.</summary>
public sealed partial class AnalysisForm
{
    private readonly EntryForm form = new();
    private readonly List<AnalysisRow> rows = [];
    private readonly TextEntry source;
    private readonly TextEntry kind;
    private readonly TextEntry reason;
    private readonly SeenVersion seen = new();

    public AnalysisForm()
    {
        source = form.Words("source", isRequired: true);
        kind = form.Choice("sourceKind", isRequired: true);
        reason = form.Words("reason", isRequired: true);
    }

    [Parameter, EditorRequired]
    public MaterialView Material { get; set; } = null!;

    [Parameter]
    public EventCallback Saved { get; set; }

    [Parameter]
    public EventCallback Left { get; set; }

    /// <summary>The analysis is another now: the page has to read again.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private CorrectAnalysis Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private IEnumerable<Choice> Kinds => AnalysisSource.Kinds.Select(name => new Choice(name, Text["SourceKind." + name]));

    protected override void OnInitialized()
    {
        seen.Open(Material.Version);
        source.Showing(Material.Analysis?.Source);
        kind.Showing(Material.Analysis?.SourceKind);
        // What stands is a start, not a text that anybody typed.
        rows.AddRange((Material.Analysis?.Percents ?? []).Select(percent => new AnalysisRow(form, percent)));
    }

    protected override void OnParametersSet() => seen.Arrived(Material.Version);

    private async Task Save()
    {
        var outcome = await HandingIn.Send(
            form,
            made => Operation.Run(made.By, new(
                made.Key, made.ObservedAt, Material.Id, seen.Value, [.. rows.Select(row => row.Input())], source.Value!, kind.Value!, reason.Value!)),
            () => AnalysisRows.Twice(rows));
        if (outcome is null) return;
        if (outcome.Succeeded) await Saved.InvokeAsync();
        else if (outcome.IsStale()) seen.Outdated();
        await Changed.InvokeAsync();
    }
}
