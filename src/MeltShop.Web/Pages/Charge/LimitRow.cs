using MeltShop.Charging.Plans;
using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;

namespace MeltShop.Web.Pages.Charge;

/// <summary>A limit beside a plan.</summary>
/// <param name="Window">What the grade says of it; null where the grade does not limit it.</param>
public sealed record LimitRow(LimitOutcome Outcome, WindowView? Window)
{
    public string Quantity => Outcome.Quantity;

    public double? Aim => Window?.Aim is { } aim && !(aim < Outcome.Min) && !(aim > Outcome.Max) ? aim : null;

    public double Margin => Window?.Margin ?? 0;

    public int Decimals => DecimalsOf(Quantity);

    /// <summary>Decimals customary for a quantity.</summary>
    public static int DecimalsOf(string quantity) => Element.TryParse(quantity, out var element) ? element.Decimals : 2;

    public static IReadOnlyList<LimitRow> Of(PlannedCharge planned, GradeView grade)
    {
        ArgumentNullException.ThrowIfNull(planned);
        ArgumentNullException.ThrowIfNull(grade);
        return
        [
            .. planned.Plan.Limits.Select(outcome => new LimitRow(
                outcome, grade.At(WindowStage.Furnace).FirstOrDefault(window => window.Quantity == outcome.Quantity))),
        ];
    }
}
