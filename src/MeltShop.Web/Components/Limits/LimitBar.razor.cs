using System.Globalization;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Limits;

/// <summary>
/// One quantity against its window: in, out or too close to tell, with a mark and a word. Colour comes only with what needs
/// a hand, and never alone.
/// </summary>
public sealed partial class LimitBar
{
    /// <summary>Finer than any instrument of a melt shop.</summary>
    private const int MostDecimals = 6;

    /// <summary>By more than this share of itself a number is not rounded away.</summary>
    private const double MostRounded = 0.2;

    /// <summary>An element symbol or the name of a derived quantity.</summary>
    [Parameter, EditorRequired]
    public string Quantity { get; set; } = "";

    /// <summary>Decimals customary for the quantity; more are shown where fewer would contradict the verdict.</summary>
    [Parameter]
    public int? Decimals { get; set; }

    [Parameter]
    public double? Least { get; set; }

    [Parameter]
    public double? Aim { get; set; }

    [Parameter]
    public double? Most { get; set; }

    /// <summary>The unrounded value; null where it was not measured, or is not judged and has none; no number where its formula says nothing.</summary>
    [Parameter, EditorRequired]
    public double? Value { get; set; }

    /// <summary>How far the true value may lie from this one, same unit: the scatter of what it is made of.</summary>
    [Parameter]
    public double Doubt { get; set; }

    /// <summary>
    /// How far one result of the instrument scatters about the same iron, as a standard deviation in the same unit; null where that is not known. Drawn
    /// and said: how much of it counts for the verdict is in <see cref="Doubt"/>.
    /// </summary>
    [Parameter]
    public double? Repeatability { get; set; }

    /// <summary>Before a value that was read below detection: <c>&lt;</c>, or <c>≤</c> where some burns saw it.</summary>
    [Parameter]
    public string BelowMark { get; set; } = "";

    /// <summary>False for a value that is shown and says nothing.</summary>
    [Parameter]
    public bool IsJudged { get; set; } = true;

    /// <summary>To the nearer limit in repeatabilities of the instrument, negative outside; null where that is not known.</summary>
    [Parameter]
    public double? Distance { get; set; }

    /// <summary>
    /// One standard deviation of what is expected, same unit, drawn and said beside it; whether it counts, <see cref="IsTooClose"/> says.
    /// </summary>
    [Parameter]
    public double Band { get; set; }

    /// <summary>True where the value is inside and what comes of it may well not be.</summary>
    [Parameter]
    public bool IsTooClose { get; set; }

    private int Usual => Decimals ?? QuantityText.Decimals(Quantity);

    private double Drawn => Math.Max(Doubt, Band);

    private double? Known => Value is { } number && double.IsFinite(number) ? number : null;

    private LimitVerdict Verdict => !IsJudged || (Value is not null && Known is null) ? LimitVerdict.Unjudged
        : LimitVerdicts.Of(Known, Least, Most, Doubt) is var verdict && IsTooClose && verdict is LimitVerdict.In ? LimitVerdict.Close : verdict;

    private LimitScale Scale => new(Least, Aim, Most, Known);

    private string Mark => Verdict switch
    {
        LimitVerdict.In => "✓",
        LimitVerdict.Low => "▼",
        LimitVerdict.High => "▲",
        LimitVerdict.Close => "≈",
        LimitVerdict.Unjudged => "∅",
        _ => "–",
    };

    private string Word => Verdict switch
    {
        LimitVerdict.In => Text["In"],
        LimitVerdict.Low => Text["Low"],
        LimitVerdict.High => Text["High"],
        LimitVerdict.Close => Text["Close"],
        LimitVerdict.Unjudged => Text["Unjudged"],
        _ => Text["Unknown"],
    };

    /// <summary>What is known of the value beyond its limits.</summary>
    private IEnumerable<(string Name, string Words)> Beside
    {
        get
        {
            if (Distance is { } distance) yield return ("distance", Text[distance < 0 ? "Beyond" : "Within", NumberText.Show(Math.Abs(distance), Math.Abs(distance) < 10 ? 1 : 0)]);
            if (Known is not null && IsSeen(Doubt)) yield return ("doubt", Text["Doubt", Spread(Doubt)]);
            if (Known is not null && IsSeen(Band)) yield return ("band", Text["Band", Spread(Band)]);
            if (Known is not null && Repeatability is { } repeatability && IsSeen(repeatability)) yield return ("repeatability", Text["Repeatability", QuantityText.Difference(Quantity, repeatability, Honest(repeatability))]);
        }
    }

    /// <summary>Burns that all read the same have no scatter but the rounding of their mean.</summary>
    private static bool IsSeen(double scatter) => Math.Round(scatter, MostDecimals) > 0;

    /// <summary>All that the bar shows: those who hear it get no less.</summary>
    private string Described => string.Join("; ",
    [
        Text["Described", QuantityText.Name(Text, Quantity), Known is null ? Text[Verdict is LimitVerdict.Unjudged ? "Unjudged" : "Unknown"].Value : BelowMark + Shown(Known), Limit(Least), Limit(Aim), Limit(Most), Word],
        .. Beside.Select(told => told.Words),
    ]);

    private string Shown(double? number) =>
        number is { } value
            ? UnitText.Of(NumberText.ShowBeside(QuantityText.Shown(Quantity, value), Honest(value), QuantityText.Shown(Quantity, Least), QuantityText.Shown(Quantity, Most)), QuantityText.Unit(Quantity))
            : "–";

    /// <summary>As many decimals as are customary, and more where they would print something else: 0.005 is no 0.01.</summary>
    private int Honest(double number)
    {
        var places = Usual;
        while (places < MostDecimals && Math.Abs(Math.Round(number, places) - number) > MostRounded * Math.Abs(number)) places++;
        return places;
    }

    /// <summary>With as many decimals as it takes not to print a scatter as none.</summary>
    private string Spread(double number)
    {
        var places = Usual;
        while (places < MostDecimals && Math.Round(number, places) == 0) places++;
        return QuantityText.Difference(Quantity, number, places);
    }

    private string Limit(double? number) => number is null ? Text["NoLimit"] : Shown(number);

    private string Place(double number) => string.Create(CultureInfo.InvariantCulture, $"left:{Scale.At(number):0.##}%");

    private static string Span(double start, double end) =>
        string.Create(CultureInfo.InvariantCulture, $"left:{start:0.##}%;width:{end - start:0.##}%");
}
