using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Quantities;

/// <summary>Nitrogen, quoted in parts per million and measured in percent. Limits are in the trace guide.</summary>
public static class Nitrogen
{
    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "nitrogen-left",
        Name = "Nitrogen that titanium leaves free",
        Sentence = "Nitrogen that is not bound as titanium nitride, if all the titanium binds it.",
        Expression = "N − Ti · 14.007/47.867, not below 0",
        Symbols = [new("N, Ti", "analysis", "%")],
        Unit = "%",
        Sources = [Bibliography.Iupac, Bibliography.Bcira41],
        Range = "A lower estimate: titanium also binds carbon. 0.02 to 0.03 % Ti is what the broadsheet adds against nitrogen.",
        Code = $"{nameof(Nitrogen)}.{nameof(LeastFreePercent)}",
        Example = new("N 0.012, Ti 0.020 → 0.0061 % (by hand)", () => LeastFreePercent(0.012, 0.020), 0.00615, 0.00001),
    };

    /// <summary>Nitrogen that is left free when all titanium binds nitrogen.</summary>
    /// <param name="nitrogenPercent">N, %, 0 or more; 0.0080 % is 80 parts per million.</param>
    /// <param name="titaniumPercent">Ti, %, 0 or more.</param>
    public static double LeastFreePercent(double nitrogenPercent, double titaniumPercent) =>
        Math.Max(0, nitrogenPercent - titaniumPercent * Element.N.AtomicMass / Element.Ti.AtomicMass);
}
