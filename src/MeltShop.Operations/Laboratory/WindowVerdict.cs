using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Route;
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

    /// <summary>The formula says nothing of such an iron: magnesium-treated, or outside its range.</summary>
    NotJudged,
}

/// <summary>A quantity of an analysis against its window, compared unrounded.</summary>
/// <param name="Quantity">Name of a <see cref="WindowQuantity"/>.</param>
/// <param name="Value">Value in its unit; null where it was not measured.</param>
public sealed record WindowVerdict(string Quantity, double? Value, double? Least, double? Aim, double? Most, WindowStanding Standing)
{
    /// <summary>What was not measured and keeps it from being judged.</summary>
    public IReadOnlyList<string> Missing { get; init; } = [];

    /// <summary>What was not measured and counted as 0 although it enters.</summary>
    public IReadOnlyList<string> TakenAsZero { get; init; } = [];

    /// <summary>Percentage points that a value may lie outside before it counts: room for sums of doubles, not for iron.</summary>
    public const double Tolerance = 1e-6;

    /// <summary>One verdict for each window that has a least or a most, in the order of the windows.</summary>
    public static IReadOnlyList<WindowVerdict> Of(IEnumerable<GradeWindow> windows, Analysis analysis) =>
        [.. windows.Where(w => w.Least is not null || w.Most is not null).Select(w => Of(w, analysis))];

    private static WindowVerdict Of(GradeWindow window, Analysis analysis)
    {
        var quantity = WindowQuantity.Find(window.Quantity) ?? throw new InvalidOperationException($"{window.Quantity} was not checked before it was kept.");
        var missing = quantity.Missing(analysis);
        double? value = missing.Count > 0 || !quantity.IsMeantFor(analysis) ? null : quantity.Value(analysis);
        var standing = value is not { } v ? (missing.Count > 0 ? WindowStanding.NotMeasured : WindowStanding.NotJudged)
            : v < window.Least - Tolerance ? WindowStanding.UnderLeast
            : v > window.Most + Tolerance ? WindowStanding.OverMost
            : WindowStanding.Inside;
        return new(window.Quantity, value, window.Least, window.Aim, window.Most, standing)
        {
            Missing = [.. missing.Select(e => e.Symbol)],
            TakenAsZero = value is null ? [] : [.. quantity.TakenAsZero(analysis).Select(e => e.Symbol)],
        };
    }
}
