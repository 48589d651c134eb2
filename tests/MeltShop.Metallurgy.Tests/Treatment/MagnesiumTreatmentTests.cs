using CsCheck;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Treatment;
using static MeltShop.Metallurgy.Tests.Treatment.TreatmentCases;

namespace MeltShop.Metallurgy.Tests.Treatment;

public class MagnesiumTreatmentTests
{
    // P.-M. Cabanne, general formula, 2011: 17.93 and 19.19 kg (own input into the printed formula). The balance of the calculation contract counts the
    // alloy's mass and exact atomic masses and gives more: 18.178 and 19.472 kg, by hand from the contract's closed form.
    [Theory]
    [InlineData(1450, 17.93, 18.178307)]
    [InlineData(1500, 19.19, 19.472011)]
    public void Solve_CaseOfThePrintedFormula_GivesTheBalanceAndThePrintGivesLess(double temperatureC, double printedKg, double balanceKg)
    {
        Assert.Equal(printedKg, MagnesiumAddition.AlloyKg(1000, 0.045, 0.015, 0.010, 5, 6, 50, temperatureC), 2);
        Assert.Equal(balanceKg, MagnesiumTreatment.Solve(Printed(temperatureC))!.AlloyKg, 6);
    }

    [Fact]
    public void Solve_NoRecoveryTemperature_DoesNotDependOnTemperature()
    {
        var problem = Printed(1500);
        var plain = problem with { Recipe = problem.Recipe with { RecoveryTemperatureC = null } };

        Assert.Equal(18.178307, MagnesiumTreatment.Solve(plain)!.AlloyKg, 6);
    }

    [Fact]
    public void Solve_Ladle_GivesTheWholeAnswer()
    {
        // By hand: F = (1000·0.99985 + 18.178307·0.94)/(1 − 0.0005 − 0.0001), silicon (15 + 8.180238)/F.
        var answer = MagnesiumTreatment.Solve(Printed())!;

        Assert.Equal(1.8178307, answer.AlloyPercent, 6);
        Assert.Equal(1017.548136, answer.MassAfterKg, 5);
        Assert.Equal(0.050, answer.MgAfterTreatmentPercent, 12);
        Assert.Equal(0.010, answer.AnalysisAfter[Element.S]!.Value, 12);
        Assert.Equal(100 * 23.180238 / 1017.548136 - 1.5, answer.SiliconPickupPercent, 6);
        Assert.Equal(Enumerable.Range(0, 31), answer.ResidualMg.Select(r => r.Minutes));
        Assert.Equal(0.045, answer.ResidualMg[5].Percent, 12);
        Assert.Empty(answer.AssumedZero);
    }

    [Fact]
    public void Solve_ExponentialFade_StartsHigher()
    {
        var problem = Printed();
        var answer = MagnesiumTreatment.Solve(problem with { Recipe = problem.Recipe with { Fade = new Fade.Exponential(0.03) } })!;

        Assert.Equal(0.045 * Math.Exp(0.15), answer.MgAfterTreatmentPercent, 12);
        Assert.Equal(0.045, answer.ResidualMg[5].Percent, 12);
    }

    [Fact]
    public void Solve_BaseSulphurUnderWhatIsLeft_RemovesNone()
    {
        // By hand, contract: m = M·μ/[ρα(1 − μ) − μ(β + σ)] = 1000·0.0005/[0.03·0.9995 − 0.0005·0.94].
        var problem = Printed();
        var answer = MagnesiumTreatment.Solve(problem with { BaseAnalysis = problem.BaseAnalysis.With(Element.S, 0.006) })!;

        Assert.Equal(1000 * 0.0005 / (0.03 * 0.9995 - 0.0005 * 0.94), answer.AlloyKg, 9);
        Assert.Equal(0.06, answer.Iron.AtStart.ElementKg(Element.S), 12);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.5)]
    public void Solve_RecoveryTooSmallForTheAlloy_IsInfeasible(double recoveryPercent)
    {
        var problem = Printed();

        Assert.Null(MagnesiumTreatment.Solve(problem with { Recipe = problem.Recipe with { MgRecoveryPercent = recoveryPercent } }));
    }

    [Theory]
    [InlineData(5_000)]
    [InlineData(100_000)]
    public void Solve_MagnesiumFadingWithoutEnd_IsInfeasible(double minutes)
    {
        var problem = Printed();

        Assert.Null(MagnesiumTreatment.Solve(problem with { AtMinutes = minutes, Recipe = problem.Recipe with { Fade = new Fade.Exponential(0.03) } }));
    }

    [Fact]
    public void Solve_NoMagnesiumWantedAndNoSulphurToRemove_NeedsNoAlloy() => Law.Holds(Gen.Double[0, 0.05], sulphur =>
    {
        var problem = Printed();
        var answer = MagnesiumTreatment.Solve(problem with
        {
            TargetMgPercent = 0,
            AtMinutes = 0,
            BaseAnalysis = problem.BaseAnalysis.With(Element.S, sulphur),
            Recipe = problem.Recipe with { SulphurLeftPercent = sulphur },
        })!;

        Law.Near(0, answer.AlloyKg);
        Assert.True(answer.AlloyKg >= 0);
    });

    [Fact]
    public void Solve_SulphurNotMeasured_IsNamed()
    {
        var problem = Printed() with { BaseAnalysis = Analysis.Of((Element.C, 3.6)) };
        var answer = MagnesiumTreatment.Solve(problem)!;

        Assert.Equal([Element.S], answer.AssumedZero);
        Assert.False(answer.AnalysisAfter.Has(Element.S));
    }

    [Fact]
    public void After_HeavierTap_HasLessMagnesiumAndNeverMoreAlloy()
    {
        var after = MagnesiumTreatment.After(Printed(), alloyKg: 18.178307, ironKg: 1_100);

        Assert.InRange(after.MgPercent, 0.0440, 0.0460);
        Assert.Equal(1_100 + 18.178307 * 0.97 - (after.Before.ElementKg(Element.S) - after.AtStart.ElementKg(Element.S)) * (1 + 24.305 / 32.06), after.AtStart.Kg, 9);
    }

    [Fact]
    public void After_TooLittleAlloyForTheSulphur_LeavesNoMagnesiumAndTheRestOfTheSulphur()
    {
        var after = MagnesiumTreatment.After(Printed(), alloyKg: 1, ironKg: 1_000);

        Assert.Equal(0, after.MgPercent);
        Assert.Equal(0.150 - 0.03 * 32.06 / 24.305, after.AtStart.ElementKg(Element.S), 12);
    }

    [Fact]
    public void LargestIronKg_Pocket_KeepsTheFloorExactlyAtTheLastMould()
    {
        var problem = Printed();
        var largest = MagnesiumTreatment.LargestIronKg(problem, alloyKg: 18, floorMgPercent: 0.035);

        Assert.InRange(largest, 1_001, 1_300);
        Assert.Equal(0.035, MagnesiumTreatment.After(problem, 18, largest).MgPercentAt(problem.AtMinutes), 12);
        Assert.Equal(0, MagnesiumTreatment.LargestIronKg(problem with { Recipe = problem.Recipe with { MgRecoveryPercent = 0 } }, 18, 0.035));
    }

    [Fact]
    public void SmallestIronKg_Pocket_MeetsTheMostAtMinuteZero()
    {
        var problem = Printed();
        var smallest = MagnesiumTreatment.SmallestIronKg(problem, alloyKg: 18, mostMgPercent: 0.060);

        Assert.Equal(0.060, MagnesiumTreatment.After(problem, 18, smallest).MgPercent, 12);
    }
}
