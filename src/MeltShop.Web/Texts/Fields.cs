namespace MeltShop.Web.Texts;

/// <summary>Names the texts of the house fields: <c>Fields.resx</c>.</summary>
public sealed class Fields;
