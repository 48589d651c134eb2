namespace MeltShop.Web.Texts;

/// <summary>Names the texts of empty, loading, failed, read-only and long lists: <c>States.resx</c>.</summary>
public sealed class States;
