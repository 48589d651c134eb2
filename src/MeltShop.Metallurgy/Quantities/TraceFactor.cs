using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;
using static MeltShop.Metallurgy.Elements.Element;

namespace MeltShop.Metallurgy.Quantities;

/// <summary>Joint effect of the trace elements that spoil spheroidal graphite.</summary>
public static class TraceFactor
{
    /// <summary>The factor as a row.</summary>
    public static LinearQuantity Quantity { get; } = new(
        "traceFactor",
        new Dictionary<Element, double> { [Ti] = 4.4, [As] = 2.0, [Sn] = 2.3, [Sb] = 5.0, [Pb] = 290, [Bi] = 370, [Al] = 1.6 });

    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "trace-factor",
        Name = "Trace factor",
        Sentence = "Below 1 an iron is usable for ductile castings without rare earths; the scatter is 0.065.",
        Expression = "4.4 Ti + 2.0 As + 2.3 Sn + 5.0 Sb + 290 Pb + 370 Bi + 1.6 Al",
        Symbols = [new("Ti … Al", "analysis of the poured iron", "%")],
        Unit = "1",
        Sources = [Bibliography.Trace],
        Range = "Ductile iron as poured; at least one of the seven measured. Titanium or antimony alone would be allowed far too much: keep single caps too.",
        Code = $"{nameof(TraceFactor)}.{nameof(Quantity)}",
        Example = new("Ti 0.015, As 0.005, Sn 0.005, Sb 0.001, Pb 0.0005, Bi 0.0001, Al 0.010 → 0.2905 (by hand)",
            () => Quantity.Value(Analysis.Of((Ti, 0.015), (As, 0.005), (Sn, 0.005), (Sb, 0.001), (Pb, 0.0005), (Bi, 0.0001), (Al, 0.010))), 0.2905, 1e-9),
    };
}
