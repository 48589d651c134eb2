using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>How a shop treats its iron: all that does not depend on the mass of one ladle.</summary>
public sealed record TreatmentRecipe
{
    /// <summary>The treatment alloy; recoveries of its other elements, yield 100. Magnesium has its own recovery below.</summary>
    public required MaterialComposition Alloy { get; init; }

    /// <summary>
    /// Recovery of magnesium, 0 to 100 %: residual at minute 0 plus what the sulphur removed has bound, over what the alloy held.
    /// The plain ratio of residual to added is another figure: <see cref="MagnesiumYield"/> converts.
    /// </summary>
    public required double MgRecoveryPercent { get; init; }

    /// <summary>Temperature at which the recovery was found, °C; null where it is used at every temperature.</summary>
    public double? RecoveryTemperatureC { get; init; }

    /// <summary>How magnesium falls afterwards.</summary>
    public required Fade Fade { get; init; }

    /// <summary>Sulphur that stays in the iron after treatment, %.</summary>
    public required double SulphurLeftPercent { get; init; }

    /// <summary>
    /// Recovery at a treatment temperature: R·(T_R/T)² where its own temperature is known, else R. May exceed 100 on cold iron:
    /// nothing is held back.
    /// </summary>
    public double RecoveryAt(double temperatureC) =>
        RecoveryTemperatureC is { } quoted ? MgRecoveryPercent * Math.Pow(quoted / temperatureC, 2) : MgRecoveryPercent;

    /// <summary>What a kilogram of alloy brings into iron of a temperature, its recovered magnesium included, before any sulphide forms.</summary>
    public Arrival ArrivalAt(double temperatureC) => Arrival.PerKilogram(Alloy with
    {
        RecoveryPercent = new Dictionary<Element, double>(Alloy.RecoveryPercent) { [Element.Mg] = RecoveryAt(temperatureC) },
    });
}
