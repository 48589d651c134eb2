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

    [Parameter, EditorRequired]
    public EventCallback Done { get; set; }

    private IEnumerable<Choice> Kinds => SampleKinds.OfTheBath.Append(SampleKind.LadleBase).Select(name => new Choice(name.ToString(), Text["Kind." + name]));

    protected override void OnParametersSet() => entry.Belongs("heatId", HeatId);
}
