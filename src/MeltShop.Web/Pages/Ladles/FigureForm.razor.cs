using MeltShop.Metallurgy.Formulas;
using MeltShop.Metallurgy.Heat;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Sites;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Sites;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Reading;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>Says a figure of a ladle anew, with its band and where it comes from.</summary>
public sealed partial class FigureForm
{
    private readonly EntryForm form = new();
    private readonly SeenVersion seen = new();
    private readonly TextEntry kind, standing, source;
    private readonly QuantityEntry value, least, most;
    private bool isOpen;

    public FigureForm()
    {
        kind = form.Choice("kind", isRequired: true);
        value = form.Quantity("value", 0, 200_000, isRequired: true);
        least = form.Quantity("least", 0, 200_000);
        most = form.Quantity("most", 0, 200_000);
        standing = form.Choice("standing", isRequired: true);
        source = form.Words("source", isRequired: true);
    }

    [Parameter, EditorRequired]
    public EquipmentLadle Ladle { get; set; } = null!;

    /// <summary>What the ladle's own fillings say of its recovery; null where there is nothing to learn from.</summary>
    [Parameter]
    public LadleRecovery? Learnt { get; set; }

    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private SetLadleFigure Operation { get; set; } = null!;

    [Inject]
    private ShopSite Shop { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private LadleFigureKind? Kind => Enum.TryParse<LadleFigureKind>(kind.Value, out var chosen) ? chosen : null;

    private string Unit => Kind is { } chosen ? FigureUnits.Of(chosen) : "";

    /// <summary>What the figure goes into.</summary>
    private Formula? Formula => Kind switch
    {
        LadleFigureKind.MgRecovery => TreatmentBalance.Formula,
        LadleFigureKind.MgFade => Fade.LinearFormula,
        LadleFigureKind.HeatLoss or LadleFigureKind.TreatmentLoss or LadleFigureKind.LeastPouring => TemperatureBudget.Formula,
        _ => null,
    };

    private IEnumerable<Choice> Kinds => Enum.GetValues<LadleFigureKind>().Select(k => new Choice(k.ToString(), Text["Figure." + k]));

    private IEnumerable<Choice> Standings => Enum.GetValues<FigureStanding>().Select(s => new Choice(s.ToString(), Text["Standing." + s]));

    protected override void OnParametersSet() => seen.Arrived(Ladle.Version);

    private void Open()
    {
        isOpen = true;
        seen.Open(Ladle.Version);
        form.Open();
    }

    /// <summary>Fills the learnt recovery in, with twice its scatter as the band; a person looks at it and saves it, or does not.</summary>
    private void TakeOver()
    {
        Open();
        var (recovery, scatter) = (Learnt!.Recovery, Learnt.Recovery.DeviationPercent!.Value);
        kind.Showing(nameof(LadleFigureKind.MgRecovery));
        value.Showing(Math.Round(recovery.MeanPercent, 1));
        least.Showing(Math.Max(0, Math.Round(recovery.MeanPercent - 2 * scatter, 1)));
        most.Showing(Math.Round(recovery.MeanPercent + 2 * scatter, 1));
        standing.Showing(nameof(FigureStanding.Learnt));
        source.Showing(Text["LearntSource", recovery.Count, Shop.Day(Learnt.From), Shop.Day(Learnt.To), NumberText.Show(scatter, 1)]);
    }

    /// <summary>What stands already is where a person starts from.</summary>
    private void Chosen()
    {
        var dimension = Kind is { } chosen ? FigureUnits.DimensionOf(chosen) : Dimension.Plain;
        foreach (var field in new[] { value, least, most }) field.Of(dimension);
        var figure = Ladle.Figures.FirstOrDefault(f => f.Kind == Kind);
        value.Showing(figure?.Value);
        least.Showing(figure?.Least);
        most.Showing(figure?.Most);
    }

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, Ladle.Ladle.Id, seen.Value, Kind!.Value, value.Needed, least.Value, most.Value, Enum.Parse<FigureStanding>(standing.Value!),
            source.Value!)));
        if (outcome is null) return;
        if (outcome.IsStale()) seen.Outdated();
        else isOpen = !outcome.Succeeded;
        await Changed.InvokeAsync();
    }
}
