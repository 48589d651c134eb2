namespace MeltShop.Web.Texts;

/// <summary>Names the texts of the yard: <c>Yard.resx</c>.</summary>
public sealed class Yard;
