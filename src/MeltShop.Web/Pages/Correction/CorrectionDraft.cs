using MeltShop.Operations.Checking;
using MeltShop.Operations.Correcting;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Correction;

/// <summary>What was typed for a correction; the last temperature stands there from the start.</summary>
public sealed class CorrectionDraft
{
    private bool isFilled;

    public CorrectionDraft()
    {
        TemperatureC = Form.Temperature("temperatureC", FieldCheck.LowestC, FieldCheck.HighestC, isRequired: true);
        Goal = Form.Choice("goal", isRequired: true);
        Goal.Showing(nameof(CorrectionGoal.Cost));
        MaxTapOffKg = Form.Mass("maxTapOffKg", 0, 1e6);
        TapOffCost = Form.PerTonne("tapOffCostPerTonne", 0, 1e6);
    }

    public EntryForm Form { get; } = new();
    public QuantityEntry TemperatureC { get; }
    public TextEntry Goal { get; }
    public QuantityEntry MaxTapOffKg { get; }
    public QuantityEntry TapOffCost { get; }
    public HashSet<string> LeftOut { get; } = [];

    /// <summary>Null until a correction can be worked out, or while a field holds what cannot be read.</summary>
    public CorrectionChoice? Choice => TemperatureC.Value is { } temperature && Enum.TryParse<CorrectionGoal>(Goal.Value, out var goal)
            && Read(MaxTapOffKg) && Read(TapOffCost)
        ? new(temperature, goal, MaxTapOffKg.Value ?? 0, PriceText.Recorded(TapOffCost), [.. LeftOut])
        : null;

    /// <summary>Once: what a person typed is not written over by a later reading of the page.</summary>
    public void Fill(double? lastTemperatureC)
    {
        if (isFilled) return;
        isFilled = true;
        TemperatureC.Showing(lastTemperatureC);
    }

    private static bool Read(QuantityEntry entry) => entry.Value is not null || string.IsNullOrWhiteSpace(entry.Text);
}
