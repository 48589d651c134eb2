using MeltShop.Metallurgy.Pouring;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.JointPours;

/// <summary>One ladle of the answer.</summary>
public sealed partial class JointRow
{
    [Parameter, EditorRequired]
    public JointPour Pour { get; set; } = null!;

    [Parameter, EditorRequired]
    public int Index { get; set; }

    [Parameter]
    public DateTimeOffset? PourAt { get; set; }

    [Parameter]
    public double? LateMinutes { get; set; }

    private JointPart Part => Pour.Parts[Index];

    private IReadOnlyList<JointPart> Failing => LateMinutes is { } minutes ? Pour.FailWhenLate(Index, minutes) : [];

    private string When(double minute) => PourAt is { } at ? Site.Time(at.AddMinutes(minute)) : Text["MinutesBefore", NumberText.Show(-minute, 1)];
}
