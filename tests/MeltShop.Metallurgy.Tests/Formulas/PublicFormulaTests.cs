using System.Reflection;
using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Tests.Formulas;

public class PublicFormulaTests
{
    /// <summary>Public methods that give a number and need no record of their own, each with the reason.</summary>
    private static readonly Dictionary<string, string> NoFormula = new()
    {
        ["Normal.Quantile"] = "mathematics, checked by its own tests",
        ["Normal.Cumulative"] = "mathematics, checked by its own tests",
        ["GuardBand.WidthByFactor"] = "the guard band's record, its factor set instead of reckoned",
        ["StudentT.UpperQuantile"] = "mathematics, checked by its own tests",
        ["MagnesiumYield.PlainPercent"] = "a ratio, named so that it is not taken for the yield",
        ["MagnesiumYield.CreditFromPlainPercent"] = "the yield's record, from the plain ratio",
        ["GreyStrength.NormalRoundedMPa"] = "the doubt of the normal strength's record",
        ["MagnesiumTreatment.LargestIronKg"] = "the treatment balance, solved for the iron",
        ["MagnesiumTreatment.SmallestIronKg"] = "the treatment balance, solved for the iron",
        ["CoredWire.MetresOf"] = "the last step of the wire's record",
        ["CoredWire.MagnesiumKg"] = "the last step of the wire's record, turned round",
        ["LearntRecovery.Percent"] = "the treatment balance, solved for the recovery",
        ["PearliteFactor.ForFerrite"] = "the ferrite share's record, turned round",
        ["ControlChartConstants.RangePerDeviation"] = "a table behind the constants' record",
        ["ControlChartConstants.RangeLowerFactor"] = "in the constants' record",
        ["ControlChartConstants.RangeUpperFactor"] = "in the constants' record",
        ["Addition.MixedKg"] = "the addition's record, from another ladle",
        ["RunRules.ResultsBetweenFalseAlarms"] = "published numbers, with their source there",
        ["NoduleSeries.FromThousandsPerSquareInch"] = "a change of unit",
        ["WallGuide.FlotationLimit"] = "a published table and this app's own margin, both said there",
        ["AdditionHeat.SteelKWhPerTonne"] = "the second half of the expression that the record of the additions holds",
        ["ChunkyGraphite.RareEarthPercent"] = "a sum of two readings",
        ["Analysis.OrZero"] = "a reading of the analysis",
        ["Metal.ElementKg"] = "the mass balance's own figure",
        ["Metal.Percent"] = "the mass balance's own figure",
        ["Arrival.ElementKg"] = "the mass balance's own figure",
        ["MaterialComposition.Recovery"] = "a datum of the material",
        ["LinearQuantity.Value"] = "whatever quantity it is made for",
        ["WindowQuantity.Value"] = "whatever quantity it is made for",
        ["WindowQuantity.Told"] = "the ferrite share's record, turned round",
        ["LiquidusCalibration.TemperatureC"] = "the line of the calibration's record",
        ["LiquidusCalibration.CarbonEquivalentPercent"] = "the line of the calibration's record, turned round",
        ["TemperatureBudget.LastMouldC"] = "the tapping temperature's record, turned round",
        ["TreatedIron.MgPercentAt"] = "the fade's record, after the balance's",
        ["TreatedIron.MinutesTo"] = "the fade's record, turned round",
        ["TreatmentRecipe.RecoveryAt"] = "the temperature term of the printed general formula's record",
        ["Fade.Before"] = "the fade's record, turned round",
        ["Fade.MinutesTo"] = "the fade's record, turned round",
        ["FurnaceWindow.ToOwnPercent"] = "the furnace window's record, read at another sulphur",
        ["TemperatureReading.MinutesAbove"] = "a measure of readings, no law",
    };

    [Fact]
    public void PublicStaticMethod_ThatGivesANumber_HasARecord()
    {
        var recorded = Catalogue.All.Select(f => f.Code).ToHashSet();
        var open = typeof(Formula).Assembly.GetExportedTypes()
            .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .Where(m => !m.IsSpecialName && (m.ReturnType == typeof(double) || m.ReturnType == typeof(double?)))
            .Select(m => $"{m.DeclaringType!.Name}.{m.Name}")
            .Where(name => !recorded.Contains(name) && !NoFormula.ContainsKey(name));

        Assert.Empty(open);
    }

    [Fact]
    public void PublicInstanceMethod_ThatGivesANumber_HasARecord()
    {
        var recorded = Catalogue.All.Select(f => f.Code).ToHashSet();
        var open = typeof(Formula).Assembly.GetExportedTypes()
            .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Where(m => !m.IsSpecialName && m.GetBaseDefinition() == m && (m.ReturnType == typeof(double) || m.ReturnType == typeof(double?)))
            .Select(m => $"{m.DeclaringType!.Name}.{m.Name}")
            .Where(name => !recorded.Contains(name) && !NoFormula.ContainsKey(name));

        Assert.Empty(open);
    }

    [Fact]
    public void Exemption_OfAMethodThatIsGone_IsRemoved()
    {
        var methods = typeof(Formula).Assembly.GetExportedTypes()
            .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance).Select(m => $"{t.Name}.{m.Name}")).ToHashSet();

        Assert.Subset(methods, NoFormula.Keys.ToHashSet());
    }
}
