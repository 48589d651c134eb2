using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Chain;

/// <summary>The addition formula of everyday use, which forgets the mass of what is added: shown as a check beside <see cref="Addition"/>.</summary>
public static class SimpleAddition
{
    /// <summary>The record of this formula.</summary>
    public static Formula Formula { get; } = new()
    {
        Key = "addition-simple",
        Name = "Addition, simple formula",
        Sentence = "The usual estimate of an addition.",
        Expression = "m = W (x_t − x_0) / (c · R / 100)",
        Symbols =
        [
            new("W", "bath", "kg"), new("x_0, x_t", "element now, wanted", "%"), new("c", "element in the material", "%"), new("R", "recovery", "%"),
        ],
        Unit = "kg",
        Sources = [Bibliography.SupplierAddition],
        Range = "Small additions of a rich material: it is short by 1 to 4 % where a bath moves by half a percent.",
        Code = $"{nameof(SimpleAddition)}.{nameof(Kg)}",
        Example = new("5000 kg, 0.6 → 1.2 %, 100 % at 85 % recovery → 35.3 kg (printed)", () => Kg(5000, 0.6, 1.2, 100, 85), 35.3, 0.05),
    };

    /// <summary>Mass of an addition by the simple formula.</summary>
    /// <param name="bathKg">Bath, kg.</param>
    /// <param name="nowPercent">Element now, %.</param>
    /// <param name="targetPercent">Wanted, %.</param>
    /// <param name="contentPercent">Element in the material, %, over 0.</param>
    /// <param name="recoveryPercent">Recovery, %, over 0.</param>
    /// <returns>Kilograms; negative where the target lies below.</returns>
    public static double Kg(double bathKg, double nowPercent, double targetPercent, double contentPercent, double recoveryPercent) =>
        bathKg * (targetPercent - nowPercent) / (contentPercent * recoveryPercent / 100);
}
