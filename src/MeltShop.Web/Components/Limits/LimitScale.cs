namespace MeltShop.Web.Components.Limits;

/// <summary>Where things lie on a bar, 0 to 100 % of its length: the window in the middle half, the value always on it.</summary>
public sealed class LimitScale
{
    private readonly double from;
    private readonly double length;

    public LimitScale(double? least, double? aim, double? most, double? value)
    {
        var marks = new[] { least, aim, most, value }.OfType<double>().DefaultIfEmpty(0).ToList();
        var (low, high) = (least ?? aim ?? most ?? marks.Min(), most ?? aim ?? least ?? marks.Max());
        var room = high > low ? (high - low) / 2 : Math.Max(Math.Abs(high) / 2, 0.01);
        from = Math.Min(low - room, marks.Min() - (room / 5));
        length = Math.Max(high + room, marks.Max() + (room / 5)) - from;
    }

    /// <summary>Position of a number, % of the bar.</summary>
    public double At(double number) => Math.Clamp((number - from) / length * 100, 0, 100);

    /// <summary>Start of the window; the bar's own end where that side is open.</summary>
    public double Start(double? least) => least is { } number ? At(number) : 0;

    /// <summary>End of the window.</summary>
    public double End(double? most) => most is { } number ? At(number) : 100;
}
