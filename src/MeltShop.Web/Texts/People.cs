namespace MeltShop.Web.Texts;

/// <summary>Texts of the page of people.</summary>
public sealed class People;
