namespace MeltShop.Web.Texts;

/// <summary>Names the texts of taking a material into the yard: <c>NewMaterial.resx</c>.</summary>
public sealed class NewMaterial;
