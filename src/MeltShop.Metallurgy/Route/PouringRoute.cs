using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Route;

/// <summary>
/// The way of the iron from the furnace to the mould: cover steel and treatment alloy, then inoculants in turn. Forward it says what
/// is poured; <see cref="FurnaceWindow"/> turns it round. Grey iron goes without treatment.
/// </summary>
/// <param name="Treatment">The treatment; null for grey iron.</param>
/// <param name="Inoculants">Inoculants in the order of their addition.</param>
public sealed record PouringRoute(PlannedTreatment? Treatment, IReadOnlyList<RouteAddition> Inoculants)
{
    /// <summary>What is poured of an amount of furnace iron, magnesium at minute 0; null where no alloy reaches the planned magnesium.</summary>
    /// <param name="furnaceIron">The iron as tapped, free of magnesium.</param>
    public Metal? Poured(Metal furnaceIron)
    {
        ArgumentNullException.ThrowIfNull(furnaceIron);
        var iron = Treatment is { } treatment ? Treat(treatment, furnaceIron) : furnaceIron;
        return iron is null ? null : Inoculants.Aggregate(iron, (metal, inoculant) => inoculant.Into(metal));
    }

    // The alloy is that of the planned sulphur whatever the iron brings: it lies in the pocket before the tap.
    private static Metal? Treat(PlannedTreatment treatment, Metal furnaceIron)
    {
        var alloy = treatment.Recipe.ArrivalAt(treatment.TemperatureC);
        var planned = Covered(treatment, Metal.Of(furnaceIron.Kg, Analysis.Of((Element.S, treatment.SulphurPercent))));
        var perKilogram = TreatmentBalance.AlloyPerKilogram(
            alloy, treatment.Recipe.Fade.Before(treatment.TargetMgPercent, treatment.AtMinutes), planned.Percent(Element.S), treatment.Recipe.SulphurLeftPercent);
        return perKilogram is { } ratio && double.IsFinite(ratio)
            ? TreatmentBalance.After(Covered(treatment, furnaceIron), alloy, ratio * planned.Kg, treatment.Recipe.SulphurLeftPercent)
            : null;
    }

    private static Metal Covered(PlannedTreatment treatment, Metal iron) => treatment.Cover?.Into(iron) ?? iron;
}
