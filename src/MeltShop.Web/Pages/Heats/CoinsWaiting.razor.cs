using MeltShop.Operations.Laboratory;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Coins that were taken and of which no result has come.</summary>
public sealed partial class CoinsWaiting
{
    private readonly EntryForm form = new();
    private readonly TextEntry reason;
    private CoinView? lost;

    public CoinsWaiting() => reason = form.Words("reason", isRequired: true);

    [Parameter, EditorRequired]
    public IReadOnlyList<CoinView> Coins { get; set; } = [];

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    /// <summary>The result of a coin is at hand.</summary>
    [Parameter]
    public EventCallback<CoinView> Answered { get; set; }

    [Inject]
    private LoseCoin Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private void Lose(CoinView coin)
    {
        lost = coin;
        reason.Showing(null);
        form.Open();
    }

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(made.Key, made.ObservedAt, lost!.Id, reason.Value!)));
        if (outcome?.Succeeded == true) lost = null;
    }
}
