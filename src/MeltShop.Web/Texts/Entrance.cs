namespace MeltShop.Web.Texts;

/// <summary>Names the texts of signing in and of the first administrator: <c>Entrance.resx</c>.</summary>
public sealed class Entrance;
