using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Yard;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Yard;

/// <summary>One element of an analysis, as it is typed.</summary>
public sealed class AnalysisRow
{
    private readonly EntryForm form;

    public AnalysisRow(EntryForm form, MaterialPercentView? standing)
    {
        this.form = form;
        Name = standing is null ? form.NameRow() : $"row.{standing.Element.Symbol}";
        Symbol = form.Words($"{Name}.element", isRequired: true, Judge).Showing(standing?.Element.Symbol);
        Percent = form.Quantity($"{Name}.percent", 0, 100, isRequired: true).Showing(standing?.Percent);
        Spread = form.Quantity($"{Name}.spread", 0, 100).Showing(standing?.Spread);
        Recovery = form.Quantity($"{Name}.recoveryPercent", 0, 100).Showing(standing?.RecoveryPercent);
        BathRecovery = form.Quantity($"{Name}.bathRecoveryPercent", 0, 100).Showing(standing?.BathRecoveryPercent);
    }

    /// <summary>Its name in its form: that of the element which stood there, so that nothing is taken from a row that stands no more.</summary>
    public string Name { get; }

    public TextEntry Symbol { get; }
    public QuantityEntry Percent { get; }
    public QuantityEntry Spread { get; }
    public QuantityEntry Recovery { get; }
    public QuantityEntry BathRecovery { get; }

    public MaterialPercentInput Input() => new(Symbol.Value!, Percent.Needed, Spread.Value, Recovery.Value, BathRecovery.Value);

    /// <summary>Takes the row out of its form.</summary>
    public void Leave()
    {
        foreach (var field in new FieldEntry[] { Symbol, Percent, Spread, Recovery, BathRecovery }) form.Remove(field);
    }

    private static string? Judge(string symbol) =>
        !Element.TryParse(symbol, out var element) ? "element.unknown" : element == Element.Fe ? "analysis.iron" : null;
}
