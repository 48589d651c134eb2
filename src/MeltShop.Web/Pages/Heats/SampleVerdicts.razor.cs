using MeltShop.Operations.Laboratory;
using MeltShop.Records.Grades;
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
        string.Join(", ", Judged.Where(of => standing.Contains(of.Standing)).Select(of => of.Window.Quantity));
}
