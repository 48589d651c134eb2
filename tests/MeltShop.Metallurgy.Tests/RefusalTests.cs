using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Grades;
using MeltShop.Metallurgy.Heat;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Metallurgy.Route;
using MeltShop.Metallurgy.Statistics;
using MeltShop.Metallurgy.Tests.Treatment;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Tests;

/// <summary>What a programmer's error meets: nothing is taken for an empty one.</summary>
public class RefusalTests
{
    private static readonly Metal Bath = Metal.Of(100, Analysis.Of((Element.C, 3.5)));
    private static readonly Arrival Steel = Arrival.PerKilogram(new() { Analysis = Analysis.Of((Element.C, 0.1)) });
    private static readonly TreatmentProblem Problem = TreatmentCases.Printed();

    public static TheoryData<string, Action> Calls => new()
    {
        { "Addition.Kg bath", () => Addition.Kg(null!, Steel, Element.C, 3) },
        { "Addition.Kg material", () => Addition.Kg(Bath, null!, Element.C, 3) },
        { "Addition.MixedKg", () => Addition.MixedKg(Bath, null!, Element.C, 3) },
        { "Arrival", () => Arrival.PerKilogram(null!) },
        { "MeltingLoss.After", () => new MeltingLoss().After(null!) },
        { "MeltingLoss.Before", () => new MeltingLoss().Before(null!) },
        { "CrucibleHolding", () => new CrucibleHolding(1).After(null!) },
        { "Metal.Of", () => Metal.Of(1, null!) },
        { "Metal.Plus arrival", () => Bath.Plus(null!, 1) },
        { "Metal.Plus metal", () => Bath.Plus(null!) },
        { "Metal.Without", () => Bath.Without(null!, 0) },
        { "Analysis.Of", () => Analysis.Of((IEnumerable<KeyValuePair<Element, double>>)null!) },
        { "Analysis.Check", () => _ = Analysis.Check(null!, "x").ToList() },
        { "SteelKWhPerTonne", () => AdditionHeat.SteelKWhPerTonne(null!, 1450) },
        { "AdditionGuide", () => AdditionGuide.KWhPerTonne(null!, 1450) },
        { "MinutesAbove", () => TemperatureReading.MinutesAbove(null!, 1450) },
        { "CarbonEquivalent", () => CarbonEquivalent.Of(Analysis.Empty, null!) },
        { "CarbonSolubility", () => CarbonSolubility.MostPercent(1450, null!) },
        { "DerivedQuantities", () => DerivedQuantities.Of(null!) },
        { "FurtherQuantities", () => FurtherQuantities.Of(null!) },
        { "LinearQuantity.Of", () => LinearQuantity.Of(null!) },
        { "LinearQuantity.Value", () => LinearQuantity.Of(Element.C).Value(null!) },
        { "LiquidusCalibration", () => LiquidusCalibration.Fit(null!) },
        { "Flotation", () => WallGuide.Flotation(null!, 20) },
        { "GradeBook", () => _ = new GradeBook(null!) },
        { "FurnaceWindow route", () => FurnaceWindow.For(null!, []) },
        { "FurnaceWindow rows", () => FurnaceWindow.For(new(null, []), null!) },
        { "MonotoneLimits.Ferrite", () => MonotoneLimits.Ferrite(null!) },
        { "MonotoneLimits.Liquidus", () => MonotoneLimits.LiquidusTemperature(null!) },
        { "PouringRoute", () => new PouringRoute(null, []).Poured(null!) },
        { "ControlLimits", () => ControlLimits.FromIndividuals(null!) },
        { "ReplicateBurns", () => ReplicateBurns.Evaluate(null!) },
        { "RunRules results", () => RunRules.Find(null!, new(0, 1)) },
        { "RunRules limits", () => RunRules.Find([], null!) },
        { "RunRules alarms", () => RunRules.ResultsBetweenFalseAlarms(null!) },
        { "FadeFit", () => FadeFit.Of(null!) },
        { "InoculationFadeFit", () => InoculationFadeFit.Of(null!) },
        { "Inoculation.After", () => Inoculation.After(null!, new() { Analysis = Analysis.Empty }, 1) },
        { "Inoculation pickup", () => Inoculation.SiliconPickupPercent(null!, new() { Analysis = Analysis.Empty }, 1) },
        { "MagnesiumSulphide", () => MagnesiumSulphide.Leaves(null!, 0.01) },
        { "Solve", () => MagnesiumTreatment.Solve(null!) },
        { "After", () => MagnesiumTreatment.After(null!, 1, 1) },
        { "LargestIronKg", () => MagnesiumTreatment.LargestIronKg(null!, 1, 0.03) },
        { "SmallestIronKg", () => MagnesiumTreatment.SmallestIronKg(null!, 1, 0.06) },
        { "TreatmentBalance.After", () => TreatmentBalance.After(null!, Steel, 1, 0.01) },
        { "AlloyPerKilogram", () => TreatmentBalance.AlloyPerKilogram(null!, 0.05, 0.01, 0.01) },
        { "TreatmentBand", () => TreatmentBand.Of(null!, 1, 5, (40, 50), (1400, 1450)) },
    };

    [Theory]
    [MemberData(nameof(Calls))]
    public void Call_WithNothing_IsRefusedByName(string name, Action call)
    {
        var fault = Assert.Throws<ArgumentNullException>(call);

        Assert.False(string.IsNullOrEmpty(fault.ParamName), name);
        Assert.DoesNotContain(fault.ParamName, new[] { "source", "first", "second", "dictionary", "collection", "key" }); // refused by the room, not by the framework below it
    }

    [Fact]
    public void Mass_Negative_IsRefusedEverywhere()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Bath.Without(Element.C, -0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Pouring.Kg(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Grubbs.Critical(2, 0.05));
        Assert.NotNull(Problem);
    }

    private static class Pouring
    {
        public static double Kg(double castingKg) => Metallurgy.Pouring.PouredMass.Kg(castingKg, 80);
    }
}
