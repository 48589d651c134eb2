namespace MeltShop.Web.Texts;

/// <summary>Names the texts of the charts: <c>Charts.resx</c>.</summary>
public sealed class Charts;
