namespace MeltShop.Web.Texts;

/// <summary>Names the texts of what changed in the records, what was done, columns and their values: <c>Changes.resx</c>.</summary>
public sealed class Changes;
