using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Tests.Treatment;

public class TreatmentEdges
{
    private static readonly TreatmentProblem Good = TreatmentCases.Printed();

    [Fact]
    public void Solve_SulphurAroundWhatIsLeft_MeetsTheTargetOnBothSides()
    {
        // The alloy dilutes: between 0.0100 and about 0.0102 % of base sulphur none leaves, above it does. Both branches must meet there.
        for (var sulphur = 0.0099; sulphur < 0.0104; sulphur += 0.000_000_5)
        {
            var problem = Good with { BaseAnalysis = Good.BaseAnalysis.With(Element.S, sulphur) };
            var answer = MagnesiumTreatment.Solve(problem)!;

            Law.Close(0.050, answer.MgAfterTreatmentPercent, 1e-12);
            Law.Close(problem.IronKg, MagnesiumTreatment.LargestIronKg(problem, answer.AlloyKg, 0.045), 1e-12);
        }
    }

    [Fact]
    public void Solve_AlloyTooWeakWhereNoSulphurLeaves_IsInfeasible()
    {
        // 0.733 % of 6 % is 0.00044: over A·β = 0.0004 and under μ·β = 0.00047, so that only the branch without sulphide can refuse.
        var weak = Good with { BaseAnalysis = Good.BaseAnalysis.With(Element.S, 0.006), Recipe = Good.Recipe with { MgRecoveryPercent = 0.733 } };

        Assert.Null(MagnesiumTreatment.Solve(weak));
    }

    [Fact]
    public void AlloyPerKilogram_NothingButMagnesiumAndSulphurWanted_IsInfeasible()
    {
        var alloy = Good.Recipe.ArrivalAt(1450);

        Assert.Null(TreatmentBalance.AlloyPerKilogram(alloy, 60, 0.015, 40));
        Assert.Null(TreatmentBalance.AlloyPerKilogram(alloy, 60, 0.015, 50));
    }

    [Fact]
    public void Check_ZerosAndHundreds_AreSound()
    {
        Assert.Empty((Good with { AtMinutes = 0, TargetMgPercent = 0 }).Check());
        Assert.Empty((Good with { Recipe = Good.Recipe with { MgRecoveryPercent = 100, Fade = new Fade.Exponential(0), SulphurLeftPercent = 0 } }).Check());
        Assert.Equal("number.notFinite", Assert.Single((Good with { TargetMgPercent = double.PositiveInfinity }).Check()).Code);
    }

    [Fact]
    public void MinutesTo_StartOnTheFloor_IsNow()
    {
        Assert.Equal(0, new Fade.Exponential(0).MinutesTo(0.04, 0.04));
        Assert.Equal(0, new Fade.Linear(0).MinutesTo(0.04, 0.04));
        Assert.Equal(double.PositiveInfinity, new Fade.Linear(0).MinutesTo(0.05, 0.04));
    }

    [Fact]
    public void FadeFit_NothingOrNoFall_IsRefused()
    {
        Assert.Null(FadeFit.Of([]));
        Assert.Null(FadeFit.Of([(1, 0.04), (5, 0.04)]));
    }

    [Fact]
    public void AlloyKg_SulphurThatStays_IsGiven() => Assert.Equal(1000 * 0.050 / 3, MagnesiumAddition.AlloyKg(1000, 0.045, 0.010, 0.010, 5, 6, 50, 1450), 9);
}
