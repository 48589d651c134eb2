namespace MeltShop.Web.Texts;

/// <summary>Choosing how the pages look.</summary>
public sealed class Look;
