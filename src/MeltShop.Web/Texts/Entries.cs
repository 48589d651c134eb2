namespace MeltShop.Web.Texts;

/// <summary>Names the texts of the entry path: <c>Entries.resx</c>.</summary>
public sealed class Entries;
