using System.Globalization;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>Residual magnesium over the pouring time with its floor: a drawing with a table behind it.</summary>
public sealed partial class MagnesiumCurve
{
    private const int Width = 480, Height = 268, Left = 24, Right = 464, Top = 16, Bottom = 204;

    [Parameter, EditorRequired]
    public TreatedIron Iron { get; set; } = null!;

    [Parameter, EditorRequired]
    public double FloorPercent { get; set; }

    /// <summary>Least and most magnesium at minute 0 by the band, %; null where none is known.</summary>
    [Parameter]
    public (double Least, double Most)? Band { get; set; }

    private IReadOnlyList<ResidualMg> Points => Iron.ResidualMg;

    private double Highest => 1.1 * Math.Max(Band?.Most ?? Points[0].Percent, FloorPercent);

    private string Path => string.Join(' ', Points.Select(p => $"{X(p.Minutes)},{Y(p.Percent)}"));

    private string? BandPath => Band is not { } band ? null : string.Join(' ', Points.Select(p => $"{X(p.Minutes)},{Y(Iron.Fade.After(band.Most, p.Minutes))}")
        .Concat(Points.Reverse().Select(p => $"{X(p.Minutes)},{Y(Iron.Fade.After(band.Least, p.Minutes))}")));

    private string FloorWordY => Number(Bottom - (Bottom - Top) * FloorPercent / Highest + 20);

    private string StartWordY => Number(Bottom - (Bottom - Top) * Points[0].Percent / Highest - 8);

    private static string X(int minute) => Number(Left + (Right - Left) * minute / 30.0);

    private string Y(double percent) => Number(Bottom - (Bottom - Top) * percent / Highest);

    /// <summary>A word in the drawing; Razor keeps the tag name of SVG text for itself.</summary>
    private static RenderFragment Word(string x, string y, string anchor, string word) => builder =>
    {
        builder.OpenElement(0, "text");
        builder.AddAttribute(1, "class", "curve-word");
        builder.AddAttribute(2, "x", x);
        builder.AddAttribute(3, "y", y);
        builder.AddAttribute(4, "text-anchor", anchor);
        builder.AddContent(5, word);
        builder.CloseElement();
    };

    private static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    private static string Show(double percent) => NumberText.Show(percent, 3);
}
