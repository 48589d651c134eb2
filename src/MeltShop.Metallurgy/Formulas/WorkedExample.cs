namespace MeltShop.Metallurgy.Formulas;

/// <summary>A case worked out outside this code, which a test runs through the code.</summary>
/// <param name="Text">The case in words and numbers.</param>
/// <param name="Run">Runs the public code on the case.</param>
/// <param name="Expected">What the source, or arithmetic on paper, gives.</param>
/// <param name="Tolerance">Largest difference that rounding in print explains, in the unit of the result.</param>
public sealed record WorkedExample(string Text, Func<double> Run, double Expected, double Tolerance);
