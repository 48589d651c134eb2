using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Charts;

/// <summary>What a chart shows, for those who do not see it.</summary>
public sealed partial class ChartTable
{
    [Parameter, EditorRequired]
    public IReadOnlyList<ChartPoint> Points { get; set; } = [];

    [Parameter, EditorRequired]
    public int Decimals { get; set; }

    [Parameter, EditorRequired]
    public string Unit { get; set; } = "";
}
