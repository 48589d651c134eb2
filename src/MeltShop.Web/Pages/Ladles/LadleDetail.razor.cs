using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Storing;
using MeltShop.Records.Grades;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Writing;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>One filling of a ladle from its pocket card to the decision about its castings; the next thing to do stands first.</summary>
public sealed partial class LadleDetail
{
    [Parameter]
    public long Id { get; set; }

    [Inject]
    private LadlePage Page { get; set; } = null!;

    [Inject]
    private AbandonPocket Abandon { get; set; } = null!;

    [Inject]
    private LadleForecast Forecast { get; set; } = null!;

    [Inject]
    private RecordMould Moulds { get; set; } = null!;

    [Inject]
    private SendCoin Coins { get; set; } = null!;

    [Inject]
    private UndoReaction Undo { get; set; } = null!;

    private PouringView Pouring => View!.Ladle.Pouring!;

    private DateTimeOffset? LowUntil => LowMagnesiumCard.HeldUntil(View!.Ladle);

    private (double Least, double Most)? Band => Treated.Tap is { MgLeastPercent: { } least, MgMostPercent: { } most } ? (least, most) : null;

    private bool IsGrey => View!.Ladle.Grade.Family == IronFamily.Grey;

    private TreatedLadleView Treated => View!.Ladle.Treated!;

    protected override async Task<LadleContent?> Read(CancellationToken ct)
    {
        if (await Page.Load(Id, ct) is not { Treated: not null } ladle) return null;
        var last = ladle.Samples.Where(s => s.Kind == SampleKind.LastMetal && !s.Origin.IsCorrected && s.Means.Count > 0)
            .MaxBy(s => (s.Origin.ObservedAt, s.Id));
        var verdicts = last is null ? [] : await Forecast.LastMetal(Id, last.Id, ct);
        return new(ladle, Iron(ladle), last, verdicts);
    }

    protected override bool Concerns(ChangeNotice change) => View is { Ladle: var ladle } && LadleChanges.HasRest(ladle) ? change.IsOfHeats : LadleChanges.Concern(View?.Ladle, change);

    // Where no alloy lay in a pocket, the first dose stands for it.
    private static TreatedIron? Iron(LadleView ladle) =>
        ladle.Treated is { Card: { Problem: { } problem } card, Tap: { } tap } && (card.AlloyKg ?? ladle.Pouring!.Doses.FirstOrDefault(d => !d.Origin.IsCorrected)?.Kg) is { } alloyKg
            ? PocketQuestion.AfterTap(StoredJson.Value<TreatmentProblem>(problem), alloyKg, tap.Kg, tap.TemperatureC) : null;
}
