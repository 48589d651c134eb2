namespace MeltShop.Web.Texts;

/// <summary>Names the texts of the frame around every page: <c>Shell.resx</c>.</summary>
public sealed class Shell;
