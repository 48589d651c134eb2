namespace MeltShop.Web.Texts;

/// <summary>The melter's card for loading, on a screen and on paper.</summary>
public sealed class LoadingSheet;
