using CsCheck;
using MeltShop.Metallurgy.Pouring;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Tests.Pouring;

public class PouringBathTests
{
    [Fact]
    public void Bath_ToppedUpOnce_FadesPoursAndMixes()
    {
        // By hand: 1000 kg with 0.040 %, 30 kg/min poured, 0.001 % a minute: 700 kg with 0.030 % after 10 minutes. 300 kg with 0.050 %
        // arrive with 0.040 % (0.010 lost by pouring over, Giesserei-Lexikon, Magnesiumabklingen): (700 · 0.030 + 300 · 0.040)/1000 = 0.033 %.
        var moments = new PouringBath(1000, 0.040, new Fade.Linear(0.001), 30, 0.025).Follow([new(10, 300, 0.050)]);

        Assert.Equal((1000, 0.040, 15), (moments[0].KgAfter, Math.Round(moments[0].MgAfter, 12), Math.Round(moments[0].StopAt, 9)));
        Assert.Equal((700, 0.030), (moments[1].KgBefore, Math.Round(moments[1].MgBefore, 12)));
        Assert.Equal((1000, 0.033, 18), (moments[1].KgAfter, Math.Round(moments[1].MgAfter, 12), Math.Round(moments[1].StopAt, 9)));
    }

    [Fact]
    public void Bath_PouredEmpty_IsWhatComes()
    {
        var moments = new PouringBath(300, 0.040, new Fade.Linear(0.001), 100, 0.025).Follow([new(5, 400, 0.045)]);

        Assert.Equal(3, moments[0].StopAt, 9); // empty before the floor
        Assert.Equal((0, 0, 400), (moments[1].KgBefore, moments[1].MgBefore, moments[1].KgAfter));
        Assert.Equal(0.035, moments[1].MgAfter, 12);
    }

    [Fact]
    public void Bath_AnyToppingUp_KeepsIronAndMagnesiumAndMixesBetweenTheTwo() => Law.Holds(
        Gen.Select(Gen.Double[500, 5000], Gen.Double[0.02, 0.06], Gen.Double[0, 30], Gen.Double[50, 1000], Gen.Double[0.02, 0.06], Gen.Double[0, 12]), one =>
        {
            var (kg, mg, rate, comes, comesMg, minute) = one;
            var bath = new PouringBath(kg, mg, new Fade.Exponential(0.02), rate, 0.02);
            var after = bath.Follow([new(minute, comes, comesMg)])[1];
            var arrives = ReLadling.After(comesMg, 1, 0.010);

            Law.Near(after.KgBefore + comes, after.KgAfter, 1e-9);
            Law.Near(after.KgBefore * after.MgBefore + comes * arrives, after.KgAfter * after.MgAfter, 1e-9);
            Assert.InRange(after.MgAfter, Math.Min(after.MgBefore, arrives) - 1e-12, Math.Max(after.MgBefore, arrives) + 1e-12);
            Assert.Equal(bath.Follow([])[0], bath.Follow([new(minute, comes, comesMg)])[0]);
        });
}
