namespace MeltShop.Web.Components.Charts;

/// <summary>A level line of a control chart with its words at the right end.</summary>
/// <param name="Kind">Its look: <c>centre</c>, <c>control</c> (long dashes) or <c>specified</c> (a double line); they differ without colour.</param>
/// <param name="Value">Where it lies.</param>
/// <param name="Words">What it says.</param>
internal sealed record ChartLine(string Kind, double Value, string Words);
