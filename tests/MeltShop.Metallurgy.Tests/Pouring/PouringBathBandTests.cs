using MeltShop.Metallurgy.Pouring;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Tests.Pouring;

/// <summary>The band of a bath that is topped up, by hand and against a hundred thousand draws.</summary>
public class PouringBathBandTests
{
    private const int Draws = 100_000, Seed = 20261126;

    private static readonly PouringBathBand Bath = new(1000, new(0.038, 0.042), new Fade.Linear(0.0012), new Fade.Linear(0.0008), 30, 0.025);

    // By hand, worst: 0.038 - 10 x 0.0012 = 0.026; (700 x 0.026 + 300 x (0.048 - 0.010))/1000 = 0.0296. Best: 0.042 - 0.008 = 0.034; (700 x 0.034 + 300 x
    // (0.052 - 0.007))/1000 = 0.0373. Stop: (0.038 - 0.025)/0.0012 = 10.83 min, (0.042 - 0.025)/0.0008 = 21.25 min; afterwards 10 + 3.83 and 10 + 15.375.
    [Fact]
    public void Band_ToppedUpOnce_IsThatOfTheWorstAndTheBest()
    {
        var moments = Bath.Follow([new(10, 300, new(0.048, 0.052))]);

        Assert.Equal((0.026, 0.034), (Math.Round(moments[1].Before.LeastPercent, 12), Math.Round(moments[1].Before.MostPercent, 12)));
        Assert.Equal((0.0296, 0.0373), (Math.Round(moments[1].After.LeastPercent, 12), Math.Round(moments[1].After.MostPercent, 12)));
        Assert.Equal((10.833, 21.25), (Math.Round(moments[0].LeastStopAt, 3), Math.Round(moments[0].MostStopAt, 3)));
        Assert.Equal((13.833, 25.375), (Math.Round(moments[1].LeastStopAt, 3), Math.Round(moments[1].MostStopAt, 3)));
    }

    [Fact]
    public void Band_OfAHundredThousandDraws_HoldsThemAllAndIsNoWiderThanNeeded()
    {
        TestContext.Current.SendDiagnosticMessage($"Seed {Seed}");
#pragma warning disable CA5394 // draws for a test, no secret
        var random = new Random(Seed);
        var band = Bath.Follow([new(8, 300, new(0.048, 0.052)), new(15, 200, new(0.044, 0.050))]);
        var ends = band.Select(_ => (Least: double.MaxValue, Most: 0.0, Stop: double.MaxValue, Last: 0.0)).ToArray();
        for (var n = 0; n < Draws; n++)
        {
            double Within(double from, double to) => from + ((to - from) * random.NextDouble());
            var moments = new PouringBath(1000, Within(0.038, 0.042), new Fade.Linear(Within(0.0008, 0.0012)), 30, 0.025)
                .Follow([new(8, 300, Within(0.048, 0.052)), new(15, 200, Within(0.044, 0.050))], Within(0.007, 0.010));
            for (var i = 0; i < ends.Length; i++)
            {
                ends[i] = (Math.Min(ends[i].Least, moments[i].MgAfter), Math.Max(ends[i].Most, moments[i].MgAfter), Math.Min(ends[i].Stop, moments[i].StopAt), Math.Max(ends[i].Last, moments[i].StopAt));
            }
        }
#pragma warning restore CA5394

        for (var i = 0; i < ends.Length; i++)
        {
            Assert.InRange(ends[i].Least, band[i].After.LeastPercent, band[i].After.LeastPercent * 1.05);
            Assert.InRange(ends[i].Most, band[i].After.MostPercent * 0.95, band[i].After.MostPercent);
            Assert.InRange(ends[i].Stop, band[i].LeastStopAt, band[i].LeastStopAt * 1.2);
            Assert.InRange(ends[i].Last, band[i].MostStopAt * 0.8, band[i].MostStopAt);
        }
    }

    [Fact]
    public void Band_OfAnyBath_ContainsThePointAnswer()
    {
        var point = new PouringBath(1000, 0.040, new Fade.Linear(0.001), 30, 0.025).Follow([new(10, 300, 0.050)]);
        var band = Bath.Follow([new(10, 300, new(0.048, 0.052))]);

        for (var i = 0; i < point.Count; i++)
        {
            Assert.InRange(point[i].MgAfter, band[i].After.LeastPercent, band[i].After.MostPercent);
            Assert.InRange(point[i].StopAt, band[i].LeastStopAt, band[i].MostStopAt);
        }
    }
}
