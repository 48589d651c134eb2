using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>
/// The balance of a magnesium treatment in both directions: from the alloy in the pocket to the iron that comes out, and from the
/// magnesium wanted to the alloy. Both are the same equation, so that one undoes the other.
/// </summary>
public static class TreatmentBalance
{
    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "treatment-balance",
        Name = "Treatment alloy, balance",
        Sentence = "The alloy that leaves a wanted magnesium in the iron once the sulphide has formed, its own mass and silicon counted.",
        Expression = "m = M·[A(1 − s₀) + q·s₀] / [ρα − qσ − Aβ], A = (μ − q·s_L)/(1 − μ − s_L), q = 24.305/32.06; "
            + "where no sulphur would leave: m = M·μ/[ρα(1 − μ) − μ(β + σ)]",
        Symbols =
        [
            new("M", "iron treated", "kg"), new("μ", "magnesium wanted at minute 0", "mass fraction"), new("s₀, s_L", "sulphur before, left", "mass fraction"),
            new("ρ", "recovery of magnesium", "1"), new("α, σ, β", "magnesium, sulphur and the rest that arrives, of the alloy", "mass fraction"),
        ],
        Unit = "kg",
        Sources = [Bibliography.Balance, Bibliography.Iupac],
        Range = "Any alloy whose recovered magnesium exceeds what its own mass and sulphur need; no value otherwise.",
        Doubt = "The printed general formula gives 17.93 and 19.19 kg where this gives 18.178 and 19.472: it counts percents on the iron before treatment, "
            + "0.76 for 24.305/32.06, and leaves out the mass of the alloy.",
        Code = $"{nameof(TreatmentBalance)}.{nameof(AlloyPerKilogram)}",
        Example = new("1000 kg, S 0.015 → 0.010, 0.050 % Mg at minute 0, alloy of 6 % Mg, recovery 50 % → 18.178 kg (by hand)",
            () => 1000 * AlloyPerKilogram(
                Arrival.PerKilogram(new()
                {
                    Analysis = Analysis.Of((Element.Mg, 6)),
                    RecoveryPercent = new Dictionary<Element, double> { [Element.Mg] = 50 },
                }),
                mgAtStartPercent: 0.050, sulphurPercent: 0.015, sulphurLeftPercent: 0.010)!.Value,
            18.178, 0.0005),
    };

    /// <summary>The iron at minute 0 from the alloy really in the pocket and the iron really tapped.</summary>
    /// <param name="iron">Iron before treatment.</param>
    /// <param name="alloy">What a kilogram of alloy brings: <see cref="TreatmentRecipe.ArrivalAt"/>.</param>
    /// <param name="alloyKg">Alloy in the pocket, kg, 0 or more.</param>
    /// <param name="sulphurLeftPercent">Sulphur that stays, %.</param>
    public static Metal After(Metal iron, Arrival alloy, double alloyKg, double sulphurLeftPercent)
    {
        ArgumentNullException.ThrowIfNull(iron);
        return MagnesiumSulphide.Leaves(iron.Plus(alloy, alloyKg), sulphurLeftPercent);
    }

    /// <summary>Kilograms of alloy per kilogram of iron for a wanted magnesium.</summary>
    /// <param name="alloy">What a kilogram of alloy brings: <see cref="TreatmentRecipe.ArrivalAt"/>.</param>
    /// <param name="mgAtStartPercent">Magnesium wanted at minute 0, %.</param>
    /// <param name="sulphurPercent">Sulphur before treatment, %.</param>
    /// <param name="sulphurLeftPercent">Sulphur after treatment, %.</param>
    /// <returns>Kilograms per kilogram; null where no mass of this alloy gets there.</returns>
    public static double? AlloyPerKilogram(Arrival alloy, double mgAtStartPercent, double sulphurPercent, double sulphurLeftPercent)
    {
        ArgumentNullException.ThrowIfNull(alloy);
        var q = MagnesiumSulphide.MagnesiumPerSulphur;
        var (mu, before, left) = (mgAtStartPercent / 100, sulphurPercent / 100, sulphurLeftPercent / 100);
        var magnesium = alloy.ElementKg(Element.Mg);
        var sulphur = alloy.ElementKg(Element.S);
        var rest = alloy.LiquidKg - magnesium - sulphur;

        var share = 1 - mu - left;
        if (!(share > 0)) return null;
        var a = (mu - q * left) / share;
        var denominator = magnesium - q * sulphur - a * rest;
        if (!(denominator > 0)) return null;
        var alloyKg = (a * (1 - before) + q * before) / denominator;
        var massAfter = (1 - before + alloyKg * rest) / share;
        if (before + alloyKg * sulphur - left * massAfter >= 0) return alloyKg;

        var withoutSulphide = magnesium * (1 - mu) - mu * (rest + sulphur);
        return withoutSulphide > 0 ? mu / withoutSulphide : null;
    }
}
