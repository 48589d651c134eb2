namespace MeltShop.Web.Texts;

/// <summary>Names the texts of the import: <c>Import.resx</c>.</summary>
public sealed class Import;
