namespace MeltShop.Web.Components.Grid;

/// <summary>A column of a chemistry grid.</summary>
/// <param name="Symbol">What stands above it, and names its cells.</param>
/// <param name="IsSpare">Seldom needed: hidden while it is empty, and one key away.</param>
public sealed record GridColumn(string Symbol, bool IsSpare = false);
