using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Route;

/// <summary>The magnesium treatment that a grade's furnace window is planned with.</summary>
/// <param name="Recipe">Alloy, recovery, fade, sulphur left.</param>
/// <param name="TemperatureC">Treatment temperature, °C.</param>
/// <param name="TargetMgPercent">Magnesium wanted at the end of the pour, %.</param>
/// <param name="AtMinutes">Minutes from the end of the reaction to the end of the pour.</param>
/// <param name="SulphurPercent">Sulphur of the furnace iron, %: the alloy is planned for it. For a window the most that may be.</param>
/// <param name="Cover">Cover steel, of the iron tapped; null where there is none.</param>
public sealed record PlannedTreatment(
    TreatmentRecipe Recipe, double TemperatureC, double TargetMgPercent, double AtMinutes, double SulphurPercent, RouteAddition? Cover = null);
