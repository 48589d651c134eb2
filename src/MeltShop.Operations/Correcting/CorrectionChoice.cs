namespace MeltShop.Operations.Correcting;

/// <summary>What a correction has to make least.</summary>
public enum CorrectionGoal
{
    /// <summary>Cost of additions and tapping off.</summary>
    Cost,

    /// <summary>Kilograms to weigh in and to tap off: the least to handle is the quickest.</summary>
    Kilograms,

    /// <summary>Heat that the additions take from the bath.</summary>
    Cooling,
}

/// <summary>What a person chooses for a correction; what they leave open comes from the heat, the grade and the yard.</summary>
/// <param name="TemperatureC">Bath, °C.</param>
/// <param name="Goal">What has to be least.</param>
/// <param name="MaxTapOffKg">Greatest mass that may be tapped off first, kg; 0: none.</param>
/// <param name="TapOffCostPerTonne">What tapping off and remelting 1000 kg costs; needed where any may be tapped off.</param>
/// <param name="LeftOut">Codes of materials that are not to be used.</param>
/// <param name="LeastAdditionKg">Least mass of a material that is worth weighing, kg, above 0; null where any mass is.</param>
/// <param name="NearnessPrice">What one point off the grade's aim is taken to cost, per 1000 kg of bath; null: ending inside is enough.</param>
public sealed record CorrectionChoice(
    double TemperatureC, CorrectionGoal Goal = CorrectionGoal.Cost, double MaxTapOffKg = 0, decimal? TapOffCostPerTonne = null,
    IReadOnlyList<string>? LeftOut = null, double? LeastAdditionKg = null, double? NearnessPrice = null);
