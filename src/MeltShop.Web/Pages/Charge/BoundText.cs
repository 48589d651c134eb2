using MeltShop.Charging.Plans;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Units;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Pages.Charge;

/// <summary>What a mass, a share or a room that a plan sits on costs, in words: what loosening it would save, and what tightening it would cost where that is not the same.</summary>
internal static class BoundText
{
    /// <summary>A step in the shop's unit of mass: what a magnet lifts too little or too much.</summary>
    private const double MassStep = 10;

    private const double PointStep = 1, RoomStepM3 = 0.1;

    /// <summary>Less money than this is none.</summary>
    private const double Nothing = 0.005;

    /// <param name="bound">The bound.</param>
    /// <param name="freshKg">New liquid of the plan, kg.</param>
    /// <param name="currency">The shop's currency.</param>
    /// <param name="text">The words.</param>
    public static string Of(BoundOutcome bound, double freshKg, string currency, IStringLocalizer<Texts.Charge> text)
    {
        ArgumentNullException.ThrowIfNull(bound);
        ArgumentNullException.ThrowIfNull(text);
        var (more, less) = (Moved(bound.RaisedCost, "More"), Moved(bound.LoweredCost, "Less"));
        var isLower = bound.Binding is BindingBound.Min || bound.Binding is BindingBound.Both && bound.LoweredCost < 0 && bound.Kind is not MissKind.LiquidKg;
        var (first, second) = isLower ? (less, more) : (more, less);

        // Two sides of one price are one piece of news.
        var areOne = bound is { RaisedCost: { } raised, LoweredCost: { } lowered } && Math.Abs(raised + lowered) <= 1e-6 * Math.Max(Math.Abs(raised), Math.Abs(lowered));
        return string.Join(" · ", new[] { text[HoldsKey(bound)].Value, first, areOne ? null : second }.OfType<string>());

        string? Moved(double? perUnit, string way)
        {
            if (perUnit is not { } rate) return null;
            var (step, size) = Step(bound.Kind);
            var (money, perTonne) = (rate * size, IsMass(bound.Kind) ? 1000 * rate : 1000 * rate * size / freshKg);
            if (Math.Abs(money) < Nothing && Math.Abs(perTonne) < Nothing) return text[way + "Nothing", step];
            return text[way + (rate < 0 ? "Saves" : "Costs"), step, NumberText.Show(Math.Abs(money), 2), currency,
                text[IsMass(bound.Kind) ? "PerTonneOfIt" : "PerTonneOfLiquid", PriceText.Show(Math.Abs(perTonne), currency)].Value];
        }
    }

    /// <summary>The same for all that a plan sits on of one material, kind or room.</summary>
    public static IEnumerable<string> Of(ChargePlan plan, double heelKg, string name, IReadOnlyCollection<MissKind> kinds, string currency, IStringLocalizer<Texts.Charge> text)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Bounds.Where(bound => bound.Name == name && kinds.Contains(bound.Kind)).Select(bound => Of(bound, plan.LiquidKg - heelKg, currency, text));
    }

    private static string HoldsKey(BoundOutcome bound) => bound.Kind switch
    {
        MissKind.Stock => "Holds.Stock",
        MissKind.Volume => "Holds.Room",
        MissKind.LiquidKg => "Holds.Liquid",
        _ when IsMass(bound.Kind) => $"Holds.Kg.{bound.Binding}",
        _ => $"Holds.Percent.{bound.Binding}",
    };

    private static (string Shown, double Size) Step(MissKind kind) => kind switch
    {
        MissKind.Volume => (UnitText.Of(NumberText.Show(RoomStepM3), "m³"), RoomStepM3),
        _ when IsMass(kind) => ShopUnits.Current.Mass.ToRecorded(MassStep) is var kg ? (MassText.Show(kg, 0), kg) : default,
        _ => (UnitText.Percent(NumberText.Show(PointStep)), PointStep),
    };

    private static bool IsMass(MissKind kind) => kind is MissKind.Stock or MissKind.MaterialKg or MissKind.GroupKg or MissKind.LiquidKg or MissKind.WeighedKg;
}
