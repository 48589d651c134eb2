namespace MeltShop.Metallurgy.Heat;

/// <summary>One loss between the furnace and the last mould.</summary>
/// <param name="Name">Key of its name: <c>stream</c>, <c>treatment</c>, <c>transfer</c>, <c>ladle</c>, or the shop's own.</param>
/// <param name="LossK">Kelvin lost, 0 or more.</param>
public sealed record HeatLossTerm(string Name, double LossK);
