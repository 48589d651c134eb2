namespace MeltShop.Web.Texts;

/// <summary>Names the texts of charge planning: <c>Charge.resx</c>.</summary>
public sealed class Charge;
