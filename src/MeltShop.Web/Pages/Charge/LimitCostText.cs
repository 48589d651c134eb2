using MeltShop.Charging.Plans;
using MeltShop.Web.Components.Limits;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Pages.Charge;

/// <summary>What a limit that a plan sits on costs for each tonne of new liquid metal, in words.</summary>
internal static class LimitCostText
{
    /// <summary>The step on a bound that a plan gives the cost of, in the unit of the quantity.</summary>
    private const double PlanStep = 0.01;

    /// <summary>Told for a step on the last decimal that the quantity has: 0.01 % more sulphur would be as much as its limit.</summary>
    public static string Of(LimitOutcome limit, double freshKg, string currency, IStringLocalizer<Texts.Charge> text)
    {
        ArgumentNullException.ThrowIfNull(limit);
        ArgumentNullException.ThrowIfNull(text);
        var areOne = limit is { MarginalCost: { } raised, LoweredCost: { } lowered } && Math.Abs(raised + lowered) <= 1e-6 * Math.Max(Math.Abs(raised), Math.Abs(lowered));
        string?[] sides = [Side(limit.MarginalCost, ""), areOne ? null : Side(limit.LoweredCost, "Less")];
        return sides.All(side => side is null) ? text["CostUnknown"] : string.Join(" ", sides.OfType<string>());

        string? Side(double? perHundredth, string way)
        {
            if (perHundredth is not { } cost) return null;
            var step = Math.Pow(10, -QuantityText.Decimals(limit.Quantity));
            var price = 1000 * cost * step / PlanStep / freshKg;
            return text[(price < 0 ? "Saves" : "Costs") + way, PriceText.Number(Math.Abs(price)), PriceText.Unit(currency), QuantityText.Difference(limit.Quantity, step)];
        }
    }
}
