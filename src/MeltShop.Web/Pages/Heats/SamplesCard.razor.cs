using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Laboratory;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>The coins of the bath, the last one first, and the entry of another; those of a ladle stand with the ladle.</summary>
public sealed partial class SamplesCard
{
    private bool isOpen;
    private bool isSaved;
    private bool isSending;
    private CoinView? coin;

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    [Parameter, EditorRequired]
    public bool MaySetAside { get; set; }

    private IReadOnlyList<SampleView> Samples => [.. Heat.Samples.Where(sample => sample.TreatedLadleId is null && !sample.Origin.IsCorrected).Reverse()];

    private IReadOnlyList<CoinView> Coins => [.. Heat.Coins.Where(coin => coin.TreatedLadleId is null)];

    private void Open() => (isOpen, isSaved, coin) = (true, false, null);

    private void Answer(CoinView answered) => (isOpen, isSaved, isSending, coin) = (true, false, false, answered);

    private void Send() => (isSending, isSaved) = (true, false);

    private void Sent() => isSending = false;

    private void Close() => (isOpen, isSaved, coin) = (false, true, null);

    private void Leave() => (isOpen, coin) = (false, null);
}
