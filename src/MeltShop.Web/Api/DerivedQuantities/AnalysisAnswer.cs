using System.ComponentModel;
using System.Text.Json.Serialization;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Web.Api.Answering;
using Derived = MeltShop.Metallurgy.Quantities.DerivedQuantities;

namespace MeltShop.Web.Api.DerivedQuantities;

/// <summary>The answer of the analysis endpoint: each derived quantity under its name.</summary>
internal sealed record AnalysisAnswer
{
    public AnalysisAnswer(AnalysisQuestion question)
    {
        var quantities = Derived.Of(question.Analysis, question.Form).ToDictionary(q => q.Name, StringComparer.Ordinal);
        CarbonEquivalent = new(quantities["CE"]) { Form = question.Form.Id };
        DegreeOfSaturation = new(quantities["Sc"]);
        CarbonEquivalentLiquidus = new(quantities["CEL"]);
        LiquidusC = new(quantities["liquidusC"]);
        ManganeseBalance = new(quantities["manganeseBalance"]);
        PearliteFactor = new(quantities["pearliteFactor"]);
        FerritePercent = new(quantities["ferritePercent"]);
        TraceFactor = new(quantities["traceFactor"]);
    }

    [JsonPropertyName("CE")]
    public QuantityAnswer CarbonEquivalent { get; }

    [JsonPropertyName("Sc")]
    public QuantityAnswer DegreeOfSaturation { get; }

    [JsonPropertyName("CEL")]
    public QuantityAnswer CarbonEquivalentLiquidus { get; }

    public QuantityAnswer LiquidusC { get; }

    public QuantityAnswer ManganeseBalance { get; }

    public QuantityAnswer PearliteFactor { get; }

    public QuantityAnswer FerritePercent { get; }

    public QuantityAnswer TraceFactor { get; }
}

/// <summary>A derived quantity, or why there is none.</summary>
internal sealed record QuantityAnswer
{
    public QuantityAnswer(DerivedQuantity quantity)
    {
        Value = quantity.Value;
        Unit = quantity.Unit;
        Formula = quantity.Expression;
        Source = quantity.Source;
        AssumedZero = [.. quantity.AssumedZero.Select(e => e.Symbol)];
        AppliesTo = quantity.Iron == IronState.Poured ? "poured iron" : "furnace iron and poured iron";
        Why = quantity.Why is null ? null : Words.For(quantity.Why);
    }

    [Description("The value, unrounded; null where the analysis cannot support it.")]
    public double? Value { get; }

    [Description("Unit of the value; 1 for a pure number.")]
    public string Unit { get; }

    [Description("The formula used.")]
    public string Formula { get; }

    [Description("The form of the carbon equivalent used; null for other quantities.")]
    public string? Form { get; init; }

    [Description("Where the formula comes from.")]
    public string Source { get; }

    [Description("Elements that were not measured and were used as 0.")]
    public IReadOnlyList<string> AssumedZero { get; }

    [Description("Which iron it speaks of.")]
    public string AppliesTo { get; }

    [Description("Why there is no value.")]
    public string? Why { get; }
}
