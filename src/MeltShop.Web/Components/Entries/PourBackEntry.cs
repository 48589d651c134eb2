using System.Globalization;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations;
using MeltShop.Operations.Heats;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Charge;

namespace MeltShop.Web.Components.Entries;

/// <summary>Liquid iron that went back into the furnace: from a ladle of the heat, or other iron with its analysis.</summary>
public sealed class PourBackEntry : TypedEntry<double>
{
    public PourBackEntry()
    {
        Ladle = Form.Choice("treatedLadleId");
        Kg = Form.Mass("kg", 0.01, ChargeDraft.MostKg, isRequired: true);
        Reason = Form.Words("reason", isRequired: true);
        Element[] usual = [Element.C, Element.Si, Element.Mn, Element.P, Element.S, Element.Mg];
        Percents = [.. usual.Select(element => (element, Form.Quantity($"percents.{element.Symbol}", 0, 100)))];
    }

    public override string Operation => nameof(PourBack);

    /// <summary>Id of the ladle as text; empty for other iron.</summary>
    public TextEntry Ladle { get; }

    public QuantityEntry Kg { get; }

    public TextEntry Reason { get; }

    /// <summary>The analysis of other iron; what is not typed is not measured.</summary>
    public IReadOnlyList<(Element Element, QuantityEntry Percent)> Percents { get; }

    protected override Task<Outcome<double>> Run(IServiceProvider services, EntryMade made)
    {
        long? from = Ladle.Value is { } id ? long.Parse(id, NumberStyles.None, CultureInfo.InvariantCulture) : null;
        var typed = from is not null ? null : Percents.Where(percent => percent.Percent.Value is not null)
            .ToDictionary(percent => percent.Element.Symbol, percent => percent.Percent.Needed);
        return services.GetRequiredService<PourBack>().Run(made.By, new(made.Key, made.ObservedAt, Id("heatId"), from, Kg.Needed, typed, Reason.Value!));
    }
}
