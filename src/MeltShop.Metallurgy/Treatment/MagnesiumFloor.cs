using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>The least residual magnesium with which castings may be spheroidal, and what of it is free.</summary>
public static class MagnesiumFloor
{
    /// <summary>Practical floor of present processes, %.</summary>
    public const double PracticalPercent = 0.025;

    /// <summary>The record of the floor.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "magnesium-floor",
        Name = "Magnesium floor",
        Sentence = "The least residual magnesium at the last mould.",
        Expression = "max(0.025, 3 S, customer's)",
        Symbols = [new("S", "sulphur after treatment", "%")],
        Unit = "%",
        Sources = [Bibliography.MagnesiumResidual],
        Range = "Ductile iron with ordinary sections; a floor, no aim: aims lie at 0.035 to 0.055.",
        Code = $"{nameof(MagnesiumFloor)}.{nameof(Percent)}",
        Example = new("S 0.010 → 0.030 (by hand)", () => Percent(0.010), 0.030, 1e-12),
    };

    /// <summary>The record of free magnesium.</summary>
    public static Formula FreeFormula { get; } = new()
    {
        Key = "free-magnesium",
        Name = "Free magnesium, estimate",
        Sentence = "What of the magnesium that a spark shows is not bound to sulphur.",
        Expression = "Mg_free = Mg − S · 24.305/32.06",
        Symbols = [new("Mg, S", "after treatment", "%")],
        Unit = "%",
        Sources = [Bibliography.Iupac],
        Range = "An upper estimate: magnesium bound to oxygen is not in it.",
        Code = $"{nameof(MagnesiumFloor)}.{nameof(FreePercent)}",
        Example = new("Mg 0.045, S 0.010 → 0.0374 (by hand)", () => FreePercent(0.045, 0.010), 0.0374, 0.00005),
    };

    /// <summary>The floor.</summary>
    /// <param name="sulphurPercent">Sulphur after treatment, %.</param>
    /// <param name="customerPercent">Customer's least, %; null where there is none.</param>
    public static double Percent(double sulphurPercent, double? customerPercent = null) =>
        Math.Max(Math.Max(PracticalPercent, 3 * sulphurPercent), customerPercent ?? 0);

    /// <summary>Free magnesium.</summary>
    /// <param name="mgPercent">Magnesium by spark, %.</param>
    /// <param name="sulphurPercent">Sulphur, %.</param>
    public static double FreePercent(double mgPercent, double sulphurPercent) => mgPercent - MagnesiumSulphide.MagnesiumPerSulphur * sulphurPercent;
}
