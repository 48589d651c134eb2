namespace MeltShop.Charging.Solving;

/// <summary>The solver could not tell whether a program has a solution, at no tolerance that was tried.</summary>
internal sealed class UndecidedException() : InvalidOperationException("The solver failed to decide the program.");
