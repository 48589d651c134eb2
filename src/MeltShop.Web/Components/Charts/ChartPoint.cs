namespace MeltShop.Web.Components.Charts;

/// <summary>One result on a control chart.</summary>
/// <param name="Label">What it belongs to: a heat number, a time.</param>
/// <param name="Value">The result, in the unit of the chart.</param>
/// <param name="Signal">Which rule it breaks, in words; null where it breaks none.</param>
/// <param name="Reason">What people found to be the reason, or what was changed here; written on the chart.</param>
public sealed record ChartPoint(string Label, double Value, string? Signal = null, string? Reason = null)
{
    /// <summary>Where a press on the result in the table behind the chart leads; null where it leads nowhere.</summary>
    public string? Address { get; init; }
}
