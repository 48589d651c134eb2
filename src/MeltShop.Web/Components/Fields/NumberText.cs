using System.Globalization;
using System.Text.RegularExpressions;

namespace MeltShop.Web.Components.Fields;

/// <summary>
/// The one place where a typed number is read. Comma and point are both the decimal sign, whatever the language; thousands
/// marks are refused; where a text such as 1,250 is a value of the field in both readings, the person is asked.
/// </summary>
public static partial class NumberText
{
    /// <summary>A double keeps 15 decimal digits; more would be rounded without a word.</summary>
    private const int MostDigits = 15;

    /// <summary>U+2212.</summary>
    public const char Minus = '−';

    /// <summary>Reads what was typed into a field that takes <paramref name="range"/>.</summary>
    /// <param name="text">As typed; outer blanks do not matter.</param>
    /// <param name="range">What the field takes: it decides whether a second reading is possible.</param>
    /// <param name="allowsBelow">Whether "&lt;0.003" (below the detection limit) is an answer.</param>
    public static NumberReading Read(string? text, NumberRange range, bool allowsBelow = false)
    {
        var typed = (text ?? "").Trim().Replace(Minus, '-');
        if (typed.Length == 0) return NumberReading.Nothing;
        var isBelow = typed[0] == '<';
        if (isBelow && !allowsBelow) return NumberReading.Refused("number.belowMark");
        if (isBelow) typed = typed[1..].TrimStart();
        if (ThousandsMarks().IsMatch(typed)) return NumberReading.Refused("number.thousands");
        if (!OneNumber().IsMatch(typed)) return NumberReading.Refused("number.notANumber");
        if (typed.Count(char.IsAsciiDigit) > MostDigits) return NumberReading.Refused("number.tooLong");

        var value = Parse(typed.Replace(',', '.'));
        if (LooksLikeThousands().IsMatch(typed))
        {
            var other = Parse(typed.Replace(",", "", StringComparison.Ordinal).Replace(".", "", StringComparison.Ordinal));
            if (range.Contains(value) && range.Contains(other)) return NumberReading.Question(value, other);
            if (range.Contains(other)) return NumberReading.Refused("number.thousands");
        }

        return new NumberReading(value, isBelow, null, []);
    }

    /// <summary>
    /// A number for people: the culture's decimal sign, a minus that is one, no thousands marks, all its digits unless told how many
    /// decimals. In the invariant culture it is for a program, with the hyphen that programs read.
    /// </summary>
    public static string Show(double value, int? decimals = null, CultureInfo? culture = null) =>
        Signed(value.ToString(decimals is { } places ? $"F{places}" : "0.###############", culture ?? CultureInfo.CurrentCulture), culture ?? CultureInfo.CurrentCulture);

    /// <summary>A number with all its digits and no fewer decimals than customary, so that a column lines up: 3.30 above 3.58.</summary>
    public static string ShowAtLeast(double value, int decimals) =>
        Signed(value.ToString("0." + new string('0', decimals) + new string('#', MostDigits - decimals), CultureInfo.CurrentCulture), CultureInfo.CurrentCulture);

    /// <summary>
    /// A number with as many decimals as it takes that its print never contradicts a comparison with the limits:
    /// 3.604 beside a most of 3.60 is printed 3.604, not 3.60.
    /// </summary>
    public static string ShowBeside(double value, int decimals, params ReadOnlySpan<double?> limits)
    {
        var places = decimals;
        foreach (var limit in limits)
        {
            while (limit is { } number && places < MostDigits - 3 && Hides(value, number, places)) places++;
        }

        return Show(value, places);
    }

    /// <summary>The shortest text that is read as this number and as nothing else: 1.255 becomes 1.2550.</summary>
    public static string Unmistakable(double value, CultureInfo? culture = null)
    {
        var text = Show(value, null, culture);
        return LooksLikeThousands().IsMatch(text) ? text + "0" : text;
    }

    /// <summary>A hyphen before a figure reads like a dash, and a line breaks behind it; what is rounded to nought has no sign.</summary>
    private static string Signed(string text, CultureInfo culture)
    {
        var sign = culture.NumberFormat.NegativeSign;
        if (culture == CultureInfo.InvariantCulture || !text.StartsWith(sign, StringComparison.Ordinal)) return text;
        var digits = text[sign.Length..];
        return digits.Any(c => c is >= '1' and <= '9') ? Minus + digits : digits;
    }

    private static bool Hides(double value, double limit, int places) =>
        Math.Abs(value - limit) > 1e-6 && Math.Round(value, places) == Math.Round(limit, places);

    private static double Parse(string invariant) => double.Parse(invariant, NumberStyles.Float, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^-?([0-9]+([.,][0-9]+)?|[.,][0-9]+)$")]
    private static partial Regex OneNumber();

    [GeneratedRegex(@"^[-\u2212]?[1-9][0-9]{0,2}[.,][0-9]{3}$")]
    private static partial Regex LooksLikeThousands();

    /// <summary>Digits with a blank or an apostrophe between them, or with more than one comma or point.</summary>
    [GeneratedRegex(@"^-?[0-9]+(([\s'’][0-9]+)+([.,][0-9]+)?|([.,][0-9]+){2,})$")]
    private static partial Regex ThousandsMarks();
}
