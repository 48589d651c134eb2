using MeltShop.Charging.Plans;
using MeltShop.Operations.Charging;
using MeltShop.Web.Components.Limits;

namespace MeltShop.Web.Pages.Charge;

/// <summary>A limit beside a plan.</summary>
/// <param name="Row">What the target asks of it; null where a person limits it for this charge alone.</param>
public sealed record LimitRow(LimitOutcome Outcome, TargetRow? Row)
{
    public string Quantity => Outcome.Quantity;

    public double? Aim => (Row is { IsCurved: true } curved ? curved.Window?.Aim : Row?.Bounds.Aim + Moved) is { } aim && !(aim < Outcome.Min) && !(aim > Outcome.Max) ? aim : null;

    /// <summary>How far the window at the plan's own sulphur lies from that at the most, which the row is of.</summary>
    private double Moved { get; init; }

    public double Margin => Row?.WindowMargin ?? 0;

    public int Decimals => DecimalsOf(Quantity);

    /// <summary>Decimals customary for a quantity.</summary>
    public static int DecimalsOf(string quantity) => QuantityText.Decimals(quantity);

    public static IReadOnlyList<LimitRow> Of(PlannedCharge planned, IReadOnlyList<TargetRow> rows)
    {
        ArgumentNullException.ThrowIfNull(planned);
        return [.. planned.Plan.Told(planned.Problem.Limits).Select(outcome => new LimitRow(outcome, rows.FirstOrDefault(row => row.Name == outcome.Quantity))
        {
            Moved = outcome.Value - planned.Plan.Limits.First(row => row.Quantity == outcome.Quantity).Value,
        })];
    }
}
