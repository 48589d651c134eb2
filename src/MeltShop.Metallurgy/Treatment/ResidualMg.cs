namespace MeltShop.Metallurgy.Treatment;

/// <summary>Residual magnesium at a time.</summary>
/// <param name="Minutes">Minutes from the end of the reaction.</param>
/// <param name="Percent">Magnesium, %.</param>
public readonly record struct ResidualMg(int Minutes, double Percent);
