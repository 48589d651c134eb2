namespace MeltShop.Web.Texts;

/// <summary>Names the texts of the grid of burns: <c>Grid.resx</c>.</summary>
public sealed class Grid;
