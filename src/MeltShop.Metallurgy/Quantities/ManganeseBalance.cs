using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;
using static MeltShop.Metallurgy.Elements.Element;

namespace MeltShop.Metallurgy.Quantities;

/// <summary>Manganese beyond what sulphur binds as MnS.</summary>
public static class ManganeseBalance
{
    /// <summary>From here on magnesium, not manganese, binds the sulphur and the balance has no meaning, %.</summary>
    public const double MagnesiumTreatedPercent = 0.02;

    /// <summary>Manganese that a percent of sulphur binds, %: 54.94 / 32.06 of the atomic masses, rounded as the old rule has it.</summary>
    public const double BoundBySulphur = 1.7;

    /// <summary>What the old rule asks for, %: shown, not forced.</summary>
    public const double OldRulePercent = 0.3;

    /// <summary>The balance as a row: Mn − 1.7 S.</summary>
    public static LinearQuantity Quantity { get; } = new("manganeseBalance", new Dictionary<Element, double> { [Mn] = 1, [S] = -BoundBySulphur });

    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "manganese-balance",
        Name = "Manganese balance",
        Sentence = "The manganese of grey iron that sulphur leaves free; the old rule asks for about 0.3.",
        Expression = "Mn − 1.7 S",
        Symbols = [new("Mn, S", "analysis", "%")],
        Unit = "%",
        Sources = [Bibliography.ManganeseSulphur, Bibliography.Iupac],
        Range = "Grey iron. Mn and S must be measured; not for iron with 0.02 % Mg or more.",
        Doubt = "An excess of 0.3 gives the lowest strength and hardness (A. G. Fuller): the number is shown, not forced.",
        Code = $"{nameof(ManganeseBalance)}.{nameof(Quantity)}",
        Example = new("Mn 0.92, S 0.064 → 0.811 (trade note, printed)", () => Quantity.Value(Analysis.Of((Mn, 0.92), (S, 0.064))), 0.811, 0.0005),
    };
}
