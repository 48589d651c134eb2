namespace MeltShop.Web.Texts;

/// <summary>Names the texts of the bar of least, aim and most: <c>Limits.resx</c>.</summary>
public sealed class Limits;
