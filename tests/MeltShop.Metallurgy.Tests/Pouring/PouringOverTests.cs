using CsCheck;
using MeltShop.Metallurgy.Pouring;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Tests.Pouring;

/// <summary>Treated iron poured onto treated iron, as a number and as a band; figures of the test's own but for the printed loss.</summary>
public class PouringOverTests
{
    private const int Draws = 100_000;
    private const int Seed = 20261126;

    private static readonly MagnesiumRange Inside = new(0.034, 0.041);
    private static readonly MagnesiumRange Comes = new(0.042, 0.050);

    [Fact]
    public void Mixture_ByHand_LosesByThePouringOverFirst()
    {
        // (700 · 0.036 + 300 · (0.050 − 0.010)) / 1000; the loss is printed as 0.007 to 0.010 % (Giesserei-Lexikon, Magnesiumabklingen).
        Assert.Equal(0.0372, PouringOver.MgPercent(700, 0.036, 300, 0.050, ReLadling.LossPercent.Most), 12);
        Assert.Equal(0.040, PouringOver.MgPercent(0, 0.036, 300, 0.050, ReLadling.LossPercent.Most), 12); // into an empty one
    }

    [Fact]
    public void Range_ByHand_TakesEachEndWithTheWorseMass()
    {
        // Least: the leanest parts, and as little as may be there, as what comes is the leaner: (660 · 0.034 + 300 · 0.032)/960.
        // Most: the richest, and again as little: (660 · 0.041 + 300 · 0.043)/960.
        var range = PouringOver.Range((660, 740), Inside, 300, Comes);

        Assert.Equal((660 * 0.034 + 300 * 0.032) / 960, range.LeastPercent, 12);
        Assert.Equal((660 * 0.041 + 300 * 0.043) / 960, range.MostPercent, 12);
    }

    [Fact]
    public void Range_OfAHundredThousandDraws_HoldsThemAllAndIsNoWiderThanNeeded()
    {
        TestContext.Current.SendDiagnosticMessage($"Seed {Seed}");
#pragma warning disable CA5394 // draws for a test, no secret
        var random = new Random(Seed);
        var (fastest, slowest) = (new Fade.Linear(0.0012), new Fade.Linear(0.0008));
        var range = PouringOver.Range((660, 740), Inside.After(3, fastest, slowest), 300, Comes.After(5, fastest, slowest));
        var (least, most) = (double.MaxValue, 0.0);
        double Within(double from, double to) => from + (to - from) * random.NextDouble();
        for (var n = 0; n < Draws; n++)
        {
            var there = new Fade.Linear(Within(0.0008, 0.0012)).After(Within(Inside.LeastPercent, Inside.MostPercent), 3);
            var comes = new Fade.Linear(Within(0.0008, 0.0012)).After(Within(Comes.LeastPercent, Comes.MostPercent), 5);
            var mixed = PouringOver.MgPercent(Within(660, 740), there, 300, comes, Within(ReLadling.LossPercent.Least, ReLadling.LossPercent.Most));
            (least, most) = (Math.Min(least, mixed), Math.Max(most, mixed));
        }
#pragma warning restore CA5394

        Assert.InRange(least, range.LeastPercent, range.LeastPercent * 1.03);
        Assert.InRange(most, range.MostPercent * 0.97, range.MostPercent);
    }

    [Fact]
    public void Range_OfAnyBand_ContainsThePointAnswer() => Law.Holds(
        Gen.Select(Gen.Double[0, 2000], Gen.Double[1, 2000], Gen.Double[0, 0.08], Gen.Double[0, 0.08], Gen.Double[0, 0.01], Gen.Double[0, 0.05]), one =>
        {
            var (inside, comesKg, there, comes, width, doubt) = one;
            var point = PouringOver.MgPercent(inside, there, comesKg, comes, ReLadling.LossPercent.Most);
            var range = PouringOver.Range(
                (inside * (1 - doubt), inside * (1 + doubt)), new(Math.Max(0, there - width), there + width), comesKg, new(Math.Max(0, comes - width), comes + width));

            Assert.InRange(point, range.LeastPercent - 1e-12, range.MostPercent + 1e-12);
        });
}
