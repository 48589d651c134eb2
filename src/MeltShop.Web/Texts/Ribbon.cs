namespace MeltShop.Web.Texts;

/// <summary>Names the texts of the ribbon of steps: <c>Ribbon.resx</c>.</summary>
public sealed class Ribbon;
