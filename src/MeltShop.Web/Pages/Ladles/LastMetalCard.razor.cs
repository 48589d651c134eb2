using MeltShop.Operations.Laboratory;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>What the last metal of the ladle says against the poured window.</summary>
public sealed partial class LastMetalCard
{
    [Parameter, EditorRequired]
    public LadleContent View { get; set; } = null!;

    [Parameter]
    public bool MaySend { get; set; }

    private bool isSending;
    private CoinView? answering;

    /// <summary>The coin whose result is entered, as long as none has come.</summary>
    private CoinView? Answered => View.Ladle.Coins.FirstOrDefault(coin => coin.Id == answering?.Id);

    private void Send() => isSending = true;

    private void Sent() => isSending = false;

    private void Answer(CoinView coin) => answering = coin;

    private TreatedLadleView Treated => View.Ladle.Treated!;

    /// <summary>The same windows by the burns themselves: how certain each mean is.</summary>
    private IReadOnlyList<QuantityJudgement> Judgements { get; set; } = [];

    protected override void OnParametersSet() => Judgements = View.LastMetal is { } sample
        ? QuantityJudgement.Of(sample, View.Verdicts.Select(v => new WindowView(WindowStage.Poured, v.Quantity, v.Least, v.Aim, v.Most, 0))) : [];

    /// <summary>Null where the value is not the coin's: carbon through the chain has no burns.</summary>
    private QuantityJudgement? Judged(WindowVerdict verdict) => Judgements.FirstOrDefault(of => of.Window.Quantity == verdict.Quantity
        && of.Standing is not (QuantityStanding.NotMeasured or QuantityStanding.NotJudged) && of.Value == verdict.Value);
}
