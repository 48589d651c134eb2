using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Grades;
using MeltShop.Metallurgy.Heat;
using MeltShop.Metallurgy.Pouring;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Metallurgy.Route;
using MeltShop.Metallurgy.Statistics;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Formulas;

/// <summary>All formulas of this room, in the order of the docs.</summary>
public static class Catalogue
{
    /// <summary>The records; a test finds a public formula that is not here.</summary>
    public static IReadOnlyList<Formula> All { get; } =
    [
        CarbonEquivalent.Formula,
        Saturation.Formula,
        Saturation.LongFormula,
        Liquidus.CarbonEquivalentFormula,
        Liquidus.TemperatureFormula,
        AlloyedLiquidus.Formula,
        ManganeseBalance.Formula,
        PearliteFactor.Formula,
        PearliteFactor.FerriteFormula,
        TraceFactor.Formula,
        Nitrogen.Formula,
        LiquidusCalibration.Formula,
        EutecticTemperature.GreyFormula,
        EutecticTemperature.WhiteFormula,
        WhiteCup.CarbonFormula,
        WhiteCup.SiliconFormula,
        CarbonSolubility.Formula,
        CrucibleReaction.EquilibriumFormula,
        CrucibleReaction.BoilingFormula,
        CrucibleReaction.DriftFormula,
        GreyStrength.NormalFormula,
        GreyStrength.MaturityFormula,
        HeatContent.Formula,
        MeltingEnergy.EnergyFormula,
        MeltingEnergy.MinutesFormula,
        Holding.Formula,
        AdditionHeat.Formula,
        AdditionGuide.Formula,
        LadleLoss.Formula,
        TemperatureBudget.Formula,
        Addition.Formula,
        SimpleAddition.Formula,
        TreatmentBalance.Formula,
        MagnesiumAddition.Formula,
        MagnesiumYield.Formula,
        Fade.ExponentialFormula,
        Fade.LinearFormula,
        FadeFit.Formula,
        ReLadling.Formula,
        PouringOver.Formula,
        MagnesiumFloor.Formula,
        MagnesiumFloor.FreeFormula,
        MagnesiumVapour.Formula,
        CoredWire.MetresFormula,
        CoredWire.SecondsFormula,
        TundishHole.Formula,
        ChunkyGraphite.Formula,
        Inoculation.Formula,
        Inoculation.PickupFormula,
        InoculationFade.Formula,
        InoculationFadeFit.Formula,
        FurnaceWindow.Formula,
        PouredMass.Formula,
        OrderMetal.KgFormula,
        OrderMetal.HeatsFormula,
        ReplicateBurns.Formula,
        Grubbs.Formula,
        GuardBand.Formula,
        ControlChartConstants.Formula,
        Capability.PotentialFormula,
        Capability.Formula,
        AustemperingGuide.Formula,
    ];
}
