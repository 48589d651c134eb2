namespace MeltShop.Web.Texts;

/// <summary>Names the texts of a heat's page: <c>Heats.resx</c>.</summary>
public sealed class Heats;
