namespace MeltShop.Web.Texts;

/// <summary>Names the texts of the trail: <c>Trail.resx</c>.</summary>
public sealed class Trail;
