using MeltShop.Operations.Checking;
using MeltShop.Operations.Correcting;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Correction;

/// <summary>What was typed for a correction; the last temperature stands there from the start.</summary>
public sealed class CorrectionDraft
{
    /// <summary>What stands in the fields from the start, to be seen and changed: what a bench scale is good for, and a price that moves carbon to its aim and no copper.</summary>
    private const double UsualLeastKg = 0.1, UsualNearnessPrice = 10;

    private bool isFilled;

    public CorrectionDraft()
    {
        TemperatureC = Form.Temperature("temperatureC", FieldCheck.LowestC, FieldCheck.HighestC, isRequired: true);
        Goal = Form.Choice("goal", isRequired: true);
        Goal.Showing(nameof(CorrectionGoal.Cost));
        MaxTapOffKg = Form.Mass("maxTapOffKg", 0, 1e6);
        TapOffCost = Form.PerTonne("tapOffCostPerTonne", 0, 1e6);
        LeastAdditionKg = Form.Mass("leastAdditionKg", 0, 1000);
        LeastAdditionKg.Showing(UsualLeastKg);
        Nearness = Form.PerTonne("nearnessPrice", 0, 1e5);
    }

    public EntryForm Form { get; } = new();
    public QuantityEntry TemperatureC { get; }
    public TextEntry Goal { get; }
    public QuantityEntry MaxTapOffKg { get; }
    public QuantityEntry TapOffCost { get; }
    public QuantityEntry LeastAdditionKg { get; }
    public QuantityEntry Nearness { get; }
    public HashSet<string> LeftOut { get; } = [];

    /// <summary>Null until a correction can be worked out, or while a field holds what cannot be read.</summary>
    public CorrectionChoice? Choice => TemperatureC.Value is { } temperature && Enum.TryParse<CorrectionGoal>(Goal.Value, out var goal)
            && Read(MaxTapOffKg) && Read(TapOffCost) && Read(LeastAdditionKg) && Read(Nearness)
        ? new(temperature, goal, MaxTapOffKg.Value ?? 0, PriceText.Recorded(TapOffCost), [.. LeftOut], LeastAdditionKg.Value, Nearness.Value)
        : null;

    /// <summary>Once: what a person typed is not written over by a later reading of the page.</summary>
    public void Fill(double? lastTemperatureC, double? nearnessPrice, IEnumerable<string> leftOut)
    {
        if (isFilled) return;
        isFilled = true;
        TemperatureC.Showing(lastTemperatureC);
        Nearness.Showing(nearnessPrice ?? UsualNearnessPrice);
        LeftOut.UnionWith(leftOut);
    }

    private static bool Read(QuantityEntry entry) => entry.Value is not null || string.IsNullOrWhiteSpace(entry.Text);
}
