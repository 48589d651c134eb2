using MeltShop.Metallurgy.Pouring;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.JointPours;

/// <summary>When each treatment has to begin, whether each ladle passes at its own minute, and what one late does to the others.</summary>
public sealed partial class JointAnswer
{
    [Parameter, EditorRequired]
    public JointPour Pour { get; set; } = null!;

    /// <summary>When the pour begins; null where nobody said: then minutes are shown.</summary>
    [Parameter]
    public DateTimeOffset? PourAt { get; set; }

    /// <summary>How late one may be imagined; null for none.</summary>
    [Parameter]
    public double? LateMinutes { get; set; }
}
