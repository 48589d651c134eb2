namespace MeltShop.Web.Texts;

/// <summary>Names the texts of the page that shows the house components: <c>Parts.resx</c>.</summary>
public sealed class Parts;
