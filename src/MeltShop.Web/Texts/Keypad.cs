namespace MeltShop.Web.Texts;

/// <summary>Names the texts of the keys on the screen: <c>Keypad.resx</c>.</summary>
public sealed class Keypad;
