using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;
using static MeltShop.Metallurgy.Elements.Element;

namespace MeltShop.Metallurgy.Route;

/// <summary>The derived quantities among them.</summary>
public sealed partial record WindowQuantity
{
    /// <summary>Temperatures that liquid iron can have, °C.</summary>
    private static readonly (double, double) Liquid = (1000, 1800);

    /// <summary>All that a window can bound beside elements.</summary>
    public static IReadOnlyList<WindowQuantity> Derived { get; } =
    [
        Linear(CarbonEquivalent.Default.Quantity),
        Linear(Quantities.Liquidus.CarbonEquivalent),
        new("liquidusC", [C, Si, P], analysis => Quantities.Liquidus.TemperatureC(Quantities.Liquidus.CarbonEquivalent.Value(analysis)), bounds => [new(LiquidusLine, bounds)])
        {
            Unit = "°C", Decimals = 0, Range = Liquid, Line = LiquidusLine,
        },
        Linear(AlloyedLiquidus.Quantity) with { Unit = "°C", Decimals = 0, Range = Liquid },
        new("Sc", [C, Si, P], analysis => Saturation.Degree(analysis.OrZero(C), analysis.OrZero(Si), analysis.OrZero(P)), bounds => MonotoneLimits.DegreeOfSaturation(bounds.Least, bounds.Most))
        {
            Unit = "1", Range = (0.1, 2),
        },
        Linear(ManganeseBalance.Quantity) with { Range = (-100, 100), IsOfUntreatedIron = true },
        Linear(PearliteFactor.Quantity) with { Unit = "1", Range = (-100, 1000), Needed = [Mn, Si, Cu], Iron = IronState.Poured, IsOfTreatedIron = true },
        new("ferritePercent", [.. PearliteFactor.Quantity.Terms.Keys.Order()], analysis => PearliteFactor.FerritePercent(PearliteFactor.Quantity.Value(analysis)), Ferrite)
        {
            Decimals = 0, Needed = [Mn, Si, Cu], Iron = IronState.Poured, IsOfTreatedIron = true, IsLogarithm = true,
        },
        Linear(TraceFactor.Quantity) with { Unit = "1", Range = (0, 1000), Needed = [], Iron = IronState.Poured, IsOfTreatedIron = true },
        new("freeNitrogen", [N, Ti], analysis => Nitrogen.LeastFreePercent(analysis.OrZero(N), analysis.OrZero(Ti)), FreeNitrogen) { Decimals = 4, Needed = [N] },
        new("normalStrengthMPa", [C, Si, P], NormalStrength, MonotoneLimits.NormalStrength)
        {
            Unit = "MPa", Decimals = 0, Range = (GreyStrength.NormalMPa(1.0), GreyStrength.NormalMPa(0.7)), Iron = IronState.Poured, IsOfUntreatedIron = true,
        },
    ];

    private static LinearQuantity LiquidusLine => new(
        "liquidusC",
        Quantities.Liquidus.CarbonEquivalent.Terms.ToDictionary(t => t.Key, t => -LiquidusCalibration.Printed.SlopeCPerPercent * t.Value),
        LiquidusCalibration.Printed.InterceptC);

    private static WindowQuantity Linear(LinearQuantity line) =>
        new(line.Name, [.. line.Terms.Keys.Order()], line.Value, bounds => [new(line, bounds)]) { Line = line };

    // Of the logarithm, which is linear: ln F = ln 961 − Px.
    private static IEnumerable<QuantityBounds> Ferrite(Bounds percent)
    {
        var row = MonotoneLimits.Ferrite(percent);
        var whole = PearliteFactor.ForFerrite(1);
        var (least, aim, most) = (whole - row.Bounds.Most, whole - row.Bounds.Aim, whole - row.Bounds.Least);
        if (least is not null || aim is not null || most is not null)
        {
            yield return new(new(row.Quantity.Name, row.Quantity.Terms.ToDictionary(t => t.Key, t => -t.Value), whole - row.Quantity.Constant), new(least, aim, most));
        }
    }

    // Below 0 all of it is bound, so that a least of 0 asks for nothing.
    private static IEnumerable<QuantityBounds> FreeNitrogen(Bounds percent) =>
    [
        new(new("freeNitrogen", new Dictionary<Element, double> { [N] = 1, [Ti] = -N.AtomicMass / Ti.AtomicMass }), percent with { Least = percent.Least > 0 ? percent.Least : null }),
    ];

    // The strength was found on irons of 0.7 to 1.0 of saturation.
    private static double NormalStrength(Analysis analysis) =>
        Saturation.LongDegree(analysis.OrZero(C), analysis.OrZero(Si), analysis.OrZero(P)) is >= 0.7 and <= 1.0 and var degree ? GreyStrength.NormalMPa(degree) : double.NaN;
}
