using System.Globalization;

namespace MeltShop.Metallurgy.Elements;

/// <summary>
/// One measured mass percent as a report shows it. Below detection is kept as such: the percent is then the limit of detection,
/// never zero. Rounding happens here, once, at the end; everything before works with the unrounded value.
/// </summary>
/// <param name="Element">The element; it says how many decimals are customary.</param>
/// <param name="Percent">Mass percent, unrounded, 0 to 100; with <paramref name="IsBelowDetection"/> the limit of detection.</param>
/// <param name="IsBelowDetection">The instrument saw less than it can tell from nothing.</param>
public readonly record struct MeasuredPercent(Element Element, double Percent, bool IsBelowDetection = false)
{
    /// <summary>Parts per million in a percent, both by mass.</summary>
    public const double PartsPerMillionInAPercent = 10_000;

    /// <summary>Mass parts per million: 80 for 0.008 %.</summary>
    public double PartsPerMillion => Percent * PartsPerMillionInAPercent;

    /// <summary>Percent with the customary decimals, halves away from zero as on paper: 0.0125 of phosphorus is 0.013.</summary>
    public decimal Rounded => Math.Round((decimal)Percent, Element.Decimals, MidpointRounding.AwayFromZero);

    /// <summary>A percent from mass parts per million, as nitrogen and hydrogen are quoted.</summary>
    /// <param name="element">The element.</param>
    /// <param name="partsPerMillion">Mass parts per million, 0 to 1 000 000.</param>
    /// <param name="isBelowDetection">The instrument saw less than it can tell from nothing.</param>
    public static MeasuredPercent FromPartsPerMillion(Element element, double partsPerMillion, bool isBelowDetection = false) =>
        new(element, partsPerMillion / PartsPerMillionInAPercent, isBelowDetection);

    /// <summary>As a report prints it: <c>2.10</c>, or <c>&lt; 0.0005</c> with all digits of the limit of detection.</summary>
    /// <param name="culture">Decides the decimal sign.</param>
    public string Text(CultureInfo culture) => IsBelowDetection
        ? string.Create(culture, $"< {(decimal)Percent}")
        : Rounded.ToString("F" + Element.Decimals.ToString(CultureInfo.InvariantCulture), culture);
}
