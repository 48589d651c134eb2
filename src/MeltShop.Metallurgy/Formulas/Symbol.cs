namespace MeltShop.Metallurgy.Formulas;

/// <summary>One symbol of a formula.</summary>
/// <param name="Name">As the expression writes it.</param>
/// <param name="Meaning">What it is.</param>
/// <param name="Unit">Its unit; mass percent is <c>%</c>, a pure number <c>1</c>.</param>
public sealed record Symbol(string Name, string Meaning, string Unit);
