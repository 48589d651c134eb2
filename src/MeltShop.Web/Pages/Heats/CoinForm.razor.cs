using MeltShop.Records.Laboratory;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Says that a coin is on its way: when it was taken is known before its result is.</summary>
public sealed partial class CoinForm
{
    private readonly CoinEntry entry = new();

    [Parameter, EditorRequired]
    public long HeatId { get; set; }

    /// <summary>The ladle that it was taken from; null for the bath, or base iron at the spout.</summary>
    [Parameter]
    public long? TreatedLadleId { get; set; }

    [Parameter, EditorRequired]
    public EventCallback Done { get; set; }

    private IEnumerable<Choice> Kinds =>
        (TreatedLadleId is null ? SampleKinds.OfTheBath.Append(SampleKind.LadleBase) : SampleEntry.OfTheLadle).Select(name => new Choice(name.ToString(), Text["Kind." + name]));

    protected override void OnInitialized()
    {
        entry.Belongs("heatId", HeatId);
        if (TreatedLadleId is not { } ladle) return;
        entry.Belongs("treatedLadleId", ladle);
        entry.Kind.Showing(nameof(SampleKind.LastMetal));
    }
}
