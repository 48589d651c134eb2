using System.Globalization;

namespace MeltShop.Web.Components.Charts;

/// <summary>Where results lie in the drawing, in its own units.</summary>
/// <param name="Count">How many results.</param>
/// <param name="Lowest">Lowest number drawn.</param>
/// <param name="Highest">Highest number drawn.</param>
internal readonly record struct ChartScale(int Count, double Lowest, double Highest)
{
    public const int Width = 1080, Height = 400, Left = 84, Right = 800, Top = 70, Bottom = 360;

    /// <summary>Room for every number, and a little more above and below.</summary>
    /// <param name="fromZero">Numbers that cannot be under zero are drawn from zero.</param>
    public static ChartScale Of(int count, IEnumerable<double> numbers, bool fromZero = false)
    {
        var all = numbers.DefaultIfEmpty(0).ToList();
        var room = all.Max() > all.Min() ? (all.Max() - all.Min()) * 0.06 : Math.Max(Math.Abs(all.Max()) * 0.1, 0.01);
        return new(count, fromZero ? 0 : all.Min() - room, all.Max() + room);
    }

    public double X(int index) => Count > 1 ? Left + ((Right - Left) * (double)index / (Count - 1)) : (Left + Right) / 2.0;

    public double Y(double value) => Bottom - ((Bottom - Top) * (value - Lowest) / (Highest - Lowest));

    public static string Text(double length) => length.ToString("0.#", CultureInfo.InvariantCulture);
}
