using System.Globalization;

namespace MeltShop.Web.Components.Units;

/// <summary>
/// A unit in which numbers are shown and typed, and its way to the unit of the records:
/// recorded = (shown − <paramref name="Zero"/>) · <paramref name="Times"/> / <paramref name="Over"/>.
/// </summary>
/// <param name="Sign">As it is printed behind a number.</param>
public sealed record Measure(string Sign, double Times = 1, double Over = 1, double Zero = 0)
{
    /// <summary>
    /// Digits of a number that go to the unit of the records and back unchanged: a double holds a little more than 15, and the way
    /// there and back is four roundings.
    /// </summary>
    public const int Digits = 14;

    /// <summary>Nobody types more decimals of a mass or a temperature: what has more was recorded in another unit.</summary>
    private const int MostTyped = 6;

    /// <summary>Finer than any probe of a melt shop.</summary>
    private const int ProbeDecimals = 3;

    /// <summary>Digits of an end of a range, which is rounded to the inside.</summary>
    private const int RangeDigits = 4;

    public static Measure None { get; } = new("");

    public static Measure Kilogram { get; } = new("kg");

    /// <summary>
    /// 1 lb = 0.45359237 kg exactly: the international avoirdupois pound, as agreed between six countries for 1 July 1959; A. Thompson,
    /// B. N. Taylor, Guide for the Use of the International System of Units, NIST Special Publication 811, 2008 edition, appendix B.
    /// </summary>
    public static Measure Pound { get; } = new("lb", 0.45359237);

    public static Measure Celsius { get; } = new("°C");

    /// <summary>t/°C = (t/°F − 32) / 1.8 exactly: NIST Special Publication 811, 2008 edition, appendix B.</summary>
    public static Measure Fahrenheit { get; } = new("°F", 5, 9, 32) { Decimals = ProbeDecimals };

    public static Measure Kelvin { get; } = new("K");

    /// <summary>A difference of temperatures: 1 °F = 5/9 K, without the zero of the scale.</summary>
    public static Measure FahrenheitDegree { get; } = new("°F", 5, 9) { Decimals = ProbeDecimals };

    /// <summary>For 1000 kg.</summary>
    public static Measure PerTonne { get; } = new("t");

    /// <summary>
    /// For a ton of 2000 lb, by which a shop of pounds buys (common practice, no source): 907.18474 kg exactly, from the pound above. A price
    /// for 1000 kg is larger by that.
    /// </summary>
    public static Measure PerShortTon { get; } = new("sh tn", 1, 0.90718474) { Decimals = 2 };

    /// <summary>Of a number that was recorded in another unit; null where it has as many as a scale of that size shows.</summary>
    public int? Decimals { get; init; }

    /// <summary>The records are in this unit.</summary>
    public bool IsRecorded => Times == Over && Zero == 0;

    /// <summary>A typed number in the unit of the records.</summary>
    public double ToRecorded(double shown) => IsRecorded ? shown : (shown - Zero) * Times / Over;

    /// <summary>A recorded number in this unit; a number of up to <see cref="Digits"/> digits that was typed in it comes back as it was typed.</summary>
    public double FromRecorded(double recorded) => IsRecorded ? recorded : Rounded((recorded * Over / Times) + Zero);

    /// <summary>
    /// The same as a person reads it: all digits of what was typed in this unit, and of what comes from another no more than a scale or a probe shows.
    /// 5000 kg are 11023 lb, and nobody weighs 11023.113109244.
    /// </summary>
    public double Readable(double recorded)
    {
        var shown = FromRecorded(recorded);
        if (IsRecorded || Math.Round(shown, MostTyped) == shown) return shown;
        var rounded = Math.Round(shown, Decimals ?? ScaleDecimals(shown));
        return rounded == 0 ? shown : rounded;
    }

    /// <summary>Decimals on a scale: none from 100 on, one from 10 on, two from 0.1 on, four below.</summary>
    public static int ScaleDecimals(double shown) => Math.Abs(shown) switch { 0 or >= 100 => 0, >= 10 => 1, >= 0.1 => 2, _ => 4 };

    /// <summary>A range of recorded numbers in this unit, its ends rounded to the inside: what is said to be allowed is.</summary>
    public Fields.NumberRange FromRecorded(Fields.NumberRange range) => IsRecorded ? range : new(End(range.Least, Math.Ceiling), End(range.Most, Math.Floor));

    private double? End(double? recorded, Func<double, double> inside)
    {
        if (recorded is not { } number) return null;
        var shown = FromRecorded(number);
        if (shown == 0) return 0;
        var step = Math.Pow(10, RangeDigits - 1 - Math.Floor(Math.Log10(Math.Abs(shown))));
        return Rounded(inside(Rounded(shown * step)) / step);
    }

    private static double Rounded(double number) => double.Parse(number.ToString($"G{Digits}", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture);
}
