using MeltShop.Metallurgy.Statistics;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Charts;

/// <summary>
/// Single results in their order with control limits, which say what the process does, and specified limits, which say what is wanted:
/// drawn unlike, so that nobody takes one for the other. A chart of individuals after ISO 7870-2. Reads in black and white.
/// </summary>
public sealed partial class ControlChart
{
    /// <summary>Fewer results say too little about their own scatter: no control limits are drawn (common practice, no source).</summary>
    public const int FewestPoints = 20;

    /// <summary>Of more reasons the chart tells those of signals, and of a longer one the beginning; the table has them all.</summary>
    private const int MostReasons = 8, LongestReason = 40;

    /// <summary>Results that break a rule and lead somewhere, told below the chart; the table has them all.</summary>
    private const int MostListed = 5;

    /// <summary>Height of a line of words in the drawing.</summary>
    private const int WordHeight = 24;

    [Parameter, EditorRequired]
    public string Title { get; set; } = "";

    [Parameter, EditorRequired]
    public IReadOnlyList<ChartPoint> Points { get; set; } = [];

    /// <summary>From the scatter of the process itself; null where nobody worked them out.</summary>
    [Parameter]
    public ControlLimits? Limits { get; set; }

    /// <summary>Specified least.</summary>
    [Parameter]
    public double? Least { get; set; }

    /// <summary>Specified most.</summary>
    [Parameter]
    public double? Most { get; set; }

    [Parameter]
    public int Decimals { get; set; } = 2;

    /// <summary>False for ranges of two, which have no lower limit.</summary>
    [Parameter]
    public bool HasLower { get; set; } = true;

    [Parameter]
    public string Unit { get; set; } = "%";

    /// <summary>Least and most are what a certificate says of the piece, not what a grade asks.</summary>
    [Parameter]
    public bool IsCertified { get; set; }

    private ControlLimits? Drawn => Points.Count < FewestPoints ? null : Limits;

    private ChartScale Scale => ChartScale.Of(Points.Count, Points.Select(point => point.Value).Concat(Numbered.Select(line => line.Value)), fromZero: !HasLower);

    private IEnumerable<(string Kind, double Value, string Key)> Numbered => new (string Kind, double? Value, string Key)[]
        {
            ("specified", Most, IsCertified ? "CertifiedMost" : "Most"), ("control", Drawn?.Action.Upper, "Upper"), ("centre", Drawn?.Centre, "Centre"),
            ("control", HasLower ? Drawn?.Action.Lower : null, "Lower"), ("specified", Least, IsCertified ? "CertifiedLeast" : "Least"),
        }
        .Where(line => line.Value is not null).Select(line => (line.Kind, line.Value!.Value, line.Key));

    private IEnumerable<ChartLine> Levels => Numbered.Select(line => new ChartLine(line.Kind, line.Value, Text[line.Key, Show(line.Value)]));

    /// <summary>As many decimals as it takes to tell a tenth of the drawing's height.</summary>
    private int Places => Math.Clamp((int)Math.Ceiling(-Math.Log10((Scale.Highest - Scale.Lowest) / 10)), Decimals, 8);

    /// <summary>The lines from the top, each with the height of its words, which keep clear of those above.</summary>
    private IEnumerable<(ChartLine Line, double WordsAt)> Lines
    {
        get
        {
            var free = double.MinValue;
            foreach (var line in Levels.OrderByDescending(line => line.Value))
            {
                var at = Math.Max(Scale.Y(line.Value), free);
                free = at + WordHeight;
                yield return (line, at);
            }
        }
    }

    /// <summary>The latest first.</summary>
    private IReadOnlyList<ChartPoint> Broken => [.. Points.Where(point => point is { Signal: not null, Address: not null }).Reverse()];

    private string Path => string.Join(' ', Points.Select((point, index) => $"{X(index)},{At(point.Value)}"));

    private string? Words => Drawn is null ? Points.Count < FewestPoints ? Text["TooFew", Points.Count, FewestPoints].Value : null
        : Text[Least is null && Most is null ? "LegendPlain" : IsCertified ? "LegendCertified" : "Legend"].Value;

    private string Described => Text["Described", Title, Points.Count, UnitText.Of(Show(Points[^1].Value), Unit), Points.Count(point => point.Signal is not null)];

    private string X(int index) => ChartScale.Text(Scale.X(index));

    private string At(double value, double off = 0) => ChartScale.Text(Scale.Y(value) + off);

    private bool IsTold(ChartPoint point) => point.Reason is not null && (point.Signal is not null || IsFew);

    private bool IsFew { get; set; }

    protected override void OnParametersSet() => IsFew = Points.Count(point => point.Reason is not null) <= MostReasons;

    private static string Cut(string reason) => reason.Length > LongestReason ? reason[..(LongestReason - 1)] + "…" : reason;

    /// <summary>Reasons stand above the drawing, in two lines by turns, so that neighbours stay legible.</summary>
    private double LeadTop(int index) => Points.Take(index).Count(IsTold) % 2 == 0 ? WordHeight : 2 * WordHeight;

    private string LeadFrom(int index) => ChartScale.Text(LeadTop(index) + 4);

    private string Diamond(int index)
    {
        var (x, y) = (Scale.X(index), Scale.Y(Points[index].Value));
        return $"M{ChartScale.Text(x)},{ChartScale.Text(y - 11)} l11,11 -11,11 -11,-11 z";
    }

    private string Show(double value) => NumberText.Show(value, Places);

    private static RenderFragment Word(double x, double y, string anchor, string words) => SvgWord.At(x, y, anchor, words);
}
