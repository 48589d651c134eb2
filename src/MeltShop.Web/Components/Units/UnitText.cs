namespace MeltShop.Web.Components.Units;

/// <summary>A number with its unit as a page prints it: no end of a line parts the two. Every pair of them on a page is made here, or has the same blank in its text.</summary>
public static class UnitText
{
    /// <summary>U+00A0.</summary>
    public const char Blank = '\u00a0';

    /// <summary>The number alone where it has no unit.</summary>
    public static string Of(string number, string unit) => string.IsNullOrEmpty(unit) ? number : $"{number}{Blank}{unit}";

    /// <summary>A share or a content of an element.</summary>
    public static string Percent(string number) => Of(number, "%");
}
