namespace MeltShop.Charging.Solving;

/// <summary>A small move of what a solution sits on, all of it together.</summary>
/// <param name="Rows">Rows of the solved program, and how far the right-hand side of each moves.</param>
/// <param name="Columns">Columns, and how far their bounds move.</param>
internal sealed record Nudge(IReadOnlyDictionary<int, double> Rows, IReadOnlyList<ColumnNudge> Columns);

/// <summary>How far the bounds of a column move.</summary>
internal sealed record ColumnNudge(int Column, double Least, double Most);
