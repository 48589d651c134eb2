using MeltShop.Metallurgy;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>Before the tap: the pocket card is there as soon as mass and temperature are, and again at every change.</summary>
public sealed partial class LadlePreparation
{
    private readonly PocketDraft draft = new();
    private PocketFacts? facts;
    private PocketAnswer? answer;
    private int asked;

    [Parameter]
    public long HeatId { get; set; }

    [Inject]
    private LadlePage Page { get; set; } = null!;

    [Inject]
    private LadleForecast Forecast { get; set; } = null!;

    [Inject]
    private PreparePocket Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    [Inject]
    private NavigationManager Addresses { get; set; } = null!;

    // Grey iron has neither alloy nor cover that could be damp.
    private string CheckWord(string check) => IsGrey && check == "Alloy" ? "Check.Inoculant" : "Check." + check;

    private bool IsGrey => View!.Grade.Family == IronFamily.Grey;

    protected override Task<LadleView?> Read(CancellationToken ct) => Page.Prepare(HeatId, ct);

    protected override bool IsEmpty(LadleView view) => view.Ladles.Count == 0 || view.LastBath is null;

    protected override bool Concerns(ChangeNotice change) => change.IsOfHeats;

    protected override void Arrived(LadleView view)
    {
        draft.Fill(view);
        _ = InvokeAsync(Preview);
    }

    private async Task Preview()
    {
        var mine = ++asked;
        draft.OfferCover(View!);
        if (draft.Choice is not { } choice || draft.LadleId is not { } ladleId || Leaving.IsCancellationRequested)
        {
            answer = null;
            StateHasChanged();
            return;
        }

        var known = await Forecast.Facts(HeatId, ladleId, draft.AlloyId, draft.InoculantId, choice.Extras, Leaving);
        if (mine != asked || known is null) return;
        (facts, (answer, var findings)) = (known, PocketQuestion.Build(known, choice));
        draft.Form.Find(findings);
        StateHasChanged();
    }

    private async Task Load()
    {
        var outcome = await HandingIn.Send(draft.Form, made => Operation.Run(made.By, draft.Command(made.Key, made.ObservedAt, HeatId)), Unchecked);
        if (outcome?.Succeeded == true) Addresses.NavigateTo($"/ladles/{outcome.Value.TreatedLadleId}");
    }

    private IEnumerable<Finding> Unchecked() => draft.IsChecked(View!.Grade.Family) ? [] : [new Finding("", "checks.open")];
}
