using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Grades;
using MeltShop.Web.Components.Limits;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>A sample in one line: what is outside, too close to tell, not measured though it matters, or not judged.</summary>
public sealed partial class SampleVerdicts
{
    [Parameter, EditorRequired]
    public IReadOnlyList<QuantityJudgement> Judged { get; set; } = [];

    [Parameter, EditorRequired]
    public WindowStage Stage { get; set; }

    private string Named(params QuantityStanding[] standing) =>
        QuantityText.Names(LimitText, Judged.Where(of => standing.Contains(of.Standing)).Select(of => of.Window.Quantity));

    /// <summary>The elements, and after a derived quantity those that it lacks: <c>Mn, CE (P)</c>.</summary>
    private string Missing => string.Join(", ", Judged.Where(of => of.Standing == QuantityStanding.NotMeasured).Select(of =>
        Element.TryParse(of.Window.Quantity, out _) ? of.Window.Quantity : $"{QuantityText.Name(LimitText, of.Window.Quantity)} ({string.Join(", ", of.Missing)})"));
}
