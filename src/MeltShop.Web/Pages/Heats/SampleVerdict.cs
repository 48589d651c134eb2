using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Statistics;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Components.Limits;
using MeltShop.Web.Pages.Charge;
using LimitVerdict = MeltShop.Web.Components.Limits.LimitVerdict;

namespace MeltShop.Web.Pages.Heats;

/// <summary>A quantity of a sample against the furnace window.</summary>
/// <param name="Value">Mean over the burns that count; null where it was not measured.</param>
/// <param name="Doubt">Half the width of the 95 % interval of the mean, from the scatter of the burns; null where there are too few.</param>
public sealed record SampleVerdict(WindowView Window, double? Value, double? Doubt)
{
    /// <summary>Fewer burns say too little about their own scatter.</summary>
    private const int FewestBurns = 3;

    private const double Tail = 0.025;

    public int Decimals => LimitRow.DecimalsOf(Window.Quantity);

    public LimitVerdict Verdict => LimitVerdicts.Of(Value, Window.Least, Window.Most, Doubt ?? 0);

    /// <summary>One verdict for each row of the furnace window that has a least or a most.</summary>
    public static IReadOnlyList<SampleVerdict> Of(SampleView sample, GradeView grade)
    {
        ArgumentNullException.ThrowIfNull(sample);
        ArgumentNullException.ThrowIfNull(grade);
        var burns = sample.Burns.Where(burn => !burn.SetAside)
            .Select(burn => Analysis.Of(burn.Readings.Select(reading => KeyValuePair.Create(reading.Element, reading.Percent)))).ToList();
        return
        [
            .. grade.At(WindowStage.Furnace).Where(window => window.Least is not null || window.Most is not null)
                .Select(window => Of(window, sample.Analysis(), burns)),
        ];
    }

    private static SampleVerdict Of(WindowView window, Analysis mean, IReadOnlyList<Analysis> burns)
    {
        var quantity = LimitedQuantity.Of(window.Quantity);
        if (quantity.AssumedZero(mean).Any()) return new(window, null, null);
        var values = burns.Where(burn => !quantity.AssumedZero(burn).Any()).Select(quantity.Value).ToList();
        return new(window, quantity.Value(mean), values.Count < FewestBurns ? null : Interval(values));
    }

    private static double Interval(List<double> values)
    {
        var mean = values.Average();
        var deviation = Math.Sqrt(values.Sum(value => (value - mean) * (value - mean)) / (values.Count - 1));
        return StudentT.UpperQuantile(Tail, values.Count - 1) * deviation / Math.Sqrt(values.Count);
    }
}
