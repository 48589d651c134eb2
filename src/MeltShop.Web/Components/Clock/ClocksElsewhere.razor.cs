using System.Globalization;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Clock;

/// <summary>The ladles of a page that shows no clock, while they are poured.</summary>
public sealed partial class ClocksElsewhere
{
    [Parameter, EditorRequired]
    public IEnumerable<TreatedLadleView> Ladles { get; set; } = [];

    private IEnumerable<string> Ends =>
        from ladle in Ladles
        where ladle is { State: TreatedLadleState.Tapped or TreatedLadleState.Pouring, Tap: not null }
        select (ladle.ReactionEndedAt ?? ladle.Tap!.Origin.ObservedAt).ToUnixTimeMilliseconds().ToString(CultureInfo.InvariantCulture);
}
