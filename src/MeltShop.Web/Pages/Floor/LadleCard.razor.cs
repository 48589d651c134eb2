using MeltShop.Operations.Ladles;
using MeltShop.Records.Reading.Floor;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Floor;

/// <summary>A ladle under treatment with its clock: the minute at which pouring must stop, whichever limit comes first.</summary>
public sealed partial class LadleCard
{
    [Parameter, EditorRequired]
    public FloorLadle Ladle { get; set; } = null!;

    [Parameter, EditorRequired]
    public DateTimeOffset Now { get; set; }

    /// <summary>Null before the tap, and where nobody set a limit.</summary>
    private PouringLimit? First => Ladle.Times is { } times && PouringLimits.Of(times) is [var first, ..] ? first : null;

    private bool IsPressed => Ladle.ReactionEndedAt is not null;

    private DateTimeOffset Since => Ladle.ReactionEndedAt ?? Ladle.Times!.TapStartedAt ?? Ladle.Times.TappedAt!.Value;
}
