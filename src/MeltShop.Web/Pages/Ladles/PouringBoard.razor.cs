using MeltShop.Operations.Ladles;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>
/// The minute at which pouring must stop, to be read from three metres: whichever limit comes first, with the others and what they
/// count from below it.
/// </summary>
public sealed partial class PouringBoard
{
    [Parameter, EditorRequired]
    public LadleTimes Times { get; set; } = null!;

    /// <summary>The server's now, from which the browser counts.</summary>
    [Parameter, EditorRequired]
    public DateTimeOffset Now { get; set; }

    private IReadOnlyList<PouringLimit> Limits => PouringLimits.Of(Times);

    private PouringLimit? First => Limits.Count > 0 ? Limits[0] : null;

    private DateTimeOffset Since => Times.ReactionEndedAt ?? Times.TapStartedAt ?? Times.TappedAt!.Value;

    private string? SinceWords => Times.ReactionEndedAt is not null ? null : Text["SinceTap"].Value;

    /// <summary>Limits that this ladle could have and that nobody said.</summary>
    private IEnumerable<PouringLimitKind> Missing => Enum.GetValues<PouringLimitKind>()
        .Where(kind => Limits.All(limit => limit.Kind != kind) && (kind != PouringLimitKind.Magnesium || Times.HasMagnesium));
}
