namespace MeltShop.Web.Texts;

/// <summary>Texts of the page of the shop.</summary>
public sealed class Shop;
