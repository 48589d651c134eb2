using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Components.Entries;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Coins that were taken and of which no result has come.</summary>
public sealed partial class CoinsWaiting
{
    private LostCoinEntry entry = new();
    private CoinView? lost;

    [Parameter, EditorRequired]
    public IReadOnlyList<CoinView> Coins { get; set; } = [];

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    /// <summary>Where its result is entered.</summary>
    [Parameter, EditorRequired]
    public string Form { get; set; } = "";

    /// <summary>The result of a coin is at hand.</summary>
    [Parameter]
    public EventCallback<CoinView> Answered { get; set; }

    private void Lose(CoinView coin)
    {
        (lost, entry) = (coin, new());
        entry.Belongs("coinId", coin.Id);
    }

    private void Close() => lost = null;
}
