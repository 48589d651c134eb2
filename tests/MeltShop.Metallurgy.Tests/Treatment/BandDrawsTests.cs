using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Tests.Treatment;

/// <summary>The band of a pocket against a hundred thousand ladles drawn within its assumptions; figures of the test's own.</summary>
public class BandDrawsTests
{
    private const int Draws = 100_000;
    private const int Seed = 20261125;

    [Fact]
    public void Band_OfAHundredThousandDraws_HoldsThemAllAndIsNoWiderThanNeeded()
    {
        TestContext.Current.SendDiagnosticMessage($"Seed {Seed}");
#pragma warning disable CA5394 // draws for a test, no secret
        var random = new Random(Seed);
        var problem = TreatmentCases.Printed();
        var band = TreatmentBand.Of(problem, 18.178307, 5, (45, 55), (1430, 1470));
        var (least, most) = (double.MaxValue, 0.0);
        for (var n = 0; n < Draws; n++)
        {
            double Within(double from, double to) => from + (to - from) * random.NextDouble();
            var drawn = problem with { TemperatureC = Within(1430, 1470), Recipe = problem.Recipe with { MgRecoveryPercent = Within(45, 55) } };
            var iron = MagnesiumTreatment.After(drawn, 18.178307, problem.IronKg * Within(0.95, 1.05));
            (least, most) = (Math.Min(least, iron.MgPercentAt(problem.AtMinutes)), Math.Max(most, iron.MgPercent));
        }
#pragma warning restore CA5394

        Assert.InRange(least, band.LeastMgPercent, band.LeastMgPercent * 1.02);
        Assert.InRange(most, band.MostMgPercent * 0.98, band.MostMgPercent);
    }
}
