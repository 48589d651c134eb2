using CsCheck;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Tests.Treatment;

public class LearntRecoveryTests
{
    [Fact]
    public void Recovery_OfAnyLadle_IsFoundAgainFromWhatTheBalanceGives() => Law.Holds(
        Gen.Select(TreatmentCases.Any, Gen.Double[30, 90], Gen.Double[0, 10]), one =>
        {
            var (problem, recovery, minutes) = one;
            var iron = MagnesiumTreatment.After(problem with { Recipe = problem.Recipe with { MgRecoveryPercent = recovery } }, 0.02 * problem.IronKg, problem.IronKg);
            var measured = iron.MgPercentAt(minutes);
            if (measured <= 1e-6) return; // nothing is left to learn from

            Law.Near(recovery, LearntRecovery.Percent(problem, 0.02 * problem.IronKg, problem.IronKg, minutes, measured)!.Value, 1e-6);
        });

    [Fact]
    public void Recovery_OfWhatNoRecoveryExplains_IsNone()
    {
        var problem = TreatmentCases.Printed();

        Assert.Null(LearntRecovery.Percent(problem, 18, 1000, 0, 0));
        Assert.Null(LearntRecovery.Percent(problem, 18, 1000, 0, 0.5));
    }

    [Fact]
    public void Learnt_OfThreeLadles_KnowsItsScatter()
    {
        // By hand: 48, 50, 55: mean 51, squares 9 + 1 + 16 over 2.
        var learnt = LearntRecovery.Of([48, 50, 55])!;

        Assert.Equal((3, 51, 48, 55), (learnt.Count, learnt.MeanPercent, learnt.LeastPercent, learnt.MostPercent));
        Assert.Equal(Math.Sqrt(13), learnt.DeviationPercent!.Value, 12);
        Assert.Null(LearntRecovery.Of([51])!.DeviationPercent);
        Assert.Null(LearntRecovery.Of([]));
    }

    [Fact]
    [Printed("Palmer Manufacturing, Simple Solutions, issue 7: means of 17 heats of compacted iron, magnesium added and left")]
    public void PlainYield_OfSeventeenHeats_IsNearNineTenths() => Assert.Equal(89, MagnesiumYield.PlainPercent(0.0296, 0.0333), 0);
}
