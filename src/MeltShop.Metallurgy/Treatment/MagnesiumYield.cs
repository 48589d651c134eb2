using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>Two recoveries go by the same name; this keeps them apart. All percents are of the iron.</summary>
public static class MagnesiumYield
{
    /// <summary>The record of the yield with sulphur credit.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "magnesium-yield",
        Name = "Magnesium yield with sulphur credit",
        Sentence = "What of the magnesium added did work: stayed in the iron or bound sulphur.",
        Expression = "100 · (Mg + q (S_i − S_f)) / Mg_added, q = 24.305/32.06",
        Symbols = [new("Mg", "residual magnesium", "%"), new("S_i, S_f", "sulphur before, after", "%"), new("Mg_added", "magnesium added, of the iron", "%")],
        Unit = "%",
        Sources = [Bibliography.MagnesiumYield],
        Range = "Samples taken after the reaction has ended and before magnesium has faded.",
        Code = $"{nameof(MagnesiumYield)}.{nameof(WithSulphurCreditPercent)}",
        Example = new("Mg 0.040, S 0.015 → 0.008, 1.8 % of a 5 % alloy → 50.3 % (by hand)", () => WithSulphurCreditPercent(0.040, 0.015, 0.008, 0.09), 50.34, 0.005),
    };

    /// <summary>Yield with the sulphur bound counted in: what <see cref="TreatmentRecipe.MgRecoveryPercent"/> means.</summary>
    /// <param name="residualPercent">Residual magnesium, %.</param>
    /// <param name="sulphurBeforePercent">Sulphur before, %.</param>
    /// <param name="sulphurAfterPercent">Sulphur after, %.</param>
    /// <param name="addedPercent">Magnesium added, % of the iron, over 0.</param>
    public static double WithSulphurCreditPercent(double residualPercent, double sulphurBeforePercent, double sulphurAfterPercent, double addedPercent) =>
        100 * (residualPercent + MagnesiumSulphide.MagnesiumPerSulphur * (sulphurBeforePercent - sulphurAfterPercent)) / addedPercent;

    /// <summary>Plain ratio of residual to added magnesium.</summary>
    /// <param name="residualPercent">Residual magnesium, %.</param>
    /// <param name="addedPercent">Magnesium added, % of the iron, over 0.</param>
    public static double PlainPercent(double residualPercent, double addedPercent) => 100 * residualPercent / addedPercent;

    /// <summary>The yield with sulphur credit of a heat whose plain ratio is known.</summary>
    /// <param name="plainPercent">Plain ratio, %.</param>
    /// <param name="sulphurBeforePercent">Sulphur before, %.</param>
    /// <param name="sulphurAfterPercent">Sulphur after, %.</param>
    /// <param name="addedPercent">Magnesium added, % of the iron, over 0.</param>
    public static double CreditFromPlainPercent(double plainPercent, double sulphurBeforePercent, double sulphurAfterPercent, double addedPercent) =>
        WithSulphurCreditPercent(plainPercent * addedPercent / 100, sulphurBeforePercent, sulphurAfterPercent, addedPercent);
}
