using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Records.Grades;

namespace MeltShop.Operations.Laboratory;

/// <summary>How a quantity stands to its window.</summary>
public enum WindowStanding
{
    Inside,
    UnderLeast,
    OverMost,

    /// <summary>An element that it needs was not measured: nothing can be said.</summary>
    NotMeasured,
}

/// <summary>A quantity of an analysis against its window, compared unrounded.</summary>
/// <param name="Quantity">Element symbol or <c>CE</c>.</param>
/// <param name="Value">Value, percentage points; null where it was not measured.</param>
public sealed record WindowVerdict(string Quantity, double? Value, double? Least, double? Aim, double? Most, WindowStanding Standing)
{
    /// <summary>Percentage points that a value may lie outside before it counts: room for sums of doubles, not for iron.</summary>
    public const double Tolerance = 1e-6;

    /// <summary>One verdict for each window that has a least or a most, in the order of the windows.</summary>
    public static IReadOnlyList<WindowVerdict> Of(IEnumerable<GradeWindow> windows, Analysis analysis) =>
        [.. windows.Where(w => w.Least is not null || w.Most is not null).Select(w => Of(w, analysis))];

    private static WindowVerdict Of(GradeWindow window, Analysis analysis)
    {
        var quantity = LimitedQuantity.Of(window.Quantity);
        double? value = quantity.AssumedZero(analysis).Any() ? null : quantity.Value(analysis);
        var standing = value is not { } v ? WindowStanding.NotMeasured
            : v < window.Least - Tolerance ? WindowStanding.UnderLeast
            : v > window.Most + Tolerance ? WindowStanding.OverMost
            : WindowStanding.Inside;
        return new(window.Quantity, value, window.Least, window.Aim, window.Most, standing);
    }
}

/// <summary>The quantity that a grade's window names.</summary>
public static class LimitedQuantity
{
    /// <exception cref="ArgumentException">Neither an element nor <c>CE</c>; grades are checked when they are entered.</exception>
    public static LinearQuantity Of(string name) =>
        name == CarbonEquivalent.Default.Quantity.Name ? CarbonEquivalent.Default.Quantity : LinearQuantity.Of(Element.Parse(name));
}
