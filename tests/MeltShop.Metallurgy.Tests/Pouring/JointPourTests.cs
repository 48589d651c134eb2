using MeltShop.Metallurgy.Pouring;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Tests.Pouring;

/// <summary>Four ladles into one mould; figures of the test's own, each answer by hand.</summary>
public class JointPourTests
{
    private static readonly JointLadle Ladle = new()
    {
        Name = "1", Kg = 10_000, MgPercent = 0.050, MgFloorPercent = 0.040, Fade = new Fade.Linear(0.001), TemperatureC = 1400, LeastC = 1320,
        HeatLossKPerMinute = 4, InoculationMinutes = 15, TreatmentMinutes = 6, PourFrom = 0, PourTo = 2,
    };

    private static readonly IReadOnlyList<JointLadle> Four =
    [
        Ladle, Ladle with { Name = "2", PourFrom = 0, PourTo = 3 }, Ladle with { Name = "3", MgPercent = 0.044, PourFrom = 1, PourTo = 4 },
        Ladle with { Name = "4", Kg = 5000, LeastC = null, InoculationMinutes = null, PourFrom = 2, PourTo = 5 },
    ];

    [Fact]
    public void JointPour_OfFourLadles_WorksEachStartBackFromItsOwnPour()
    {
        var pour = JointPour.Of(Four);

        // Inoculation 15 − 6 = 9 min of life comes before 10 of magnesium and 20 of temperature; 2 of them go into the pour.
        Assert.Equal((-6.0, -13.0, JointLimit.Inoculation, 7.0), Rounded(pour.Parts[0]));
        Assert.Equal((-6.0, -12.0, JointLimit.Inoculation, 6.0), Rounded(pour.Parts[1]));
        Assert.Equal((-5.0, -6.0, JointLimit.Magnesium, 1.0), Rounded(pour.Parts[2])); // 4 min of life, 3 of pour
        Assert.Equal((-4.0, -11.0, JointLimit.Magnesium, 7.0), Rounded(pour.Parts[3]));
        Assert.True(pour.Passes);
        Assert.Equal(1392, pour.Parts[0].TemperatureAtEndC, 9);
    }

    [Fact]
    public void JointPour_OneLadleUnderItsFloor_FailsThoughTheMixtureIsGood()
    {
        var pour = JointPour.Of([Ladle, Ladle with { Name = "2", MgPercent = 0.041, PourTo = 3 }]);

        Assert.Equal([true, false], pour.Parts.Select(part => part.Passes));
        Assert.False(pour.Passes);
        Assert.Equal((0.048 + 0.038) / 2, pour.MixedMgPercent!.Value, 9); // over the floor of 0.040: information
    }

    [Fact]
    public void JointPour_OneLate_SaysWhoFailsMeanwhile()
    {
        var pour = JointPour.Of(Four);

        Assert.Equal(1, pour.MostLate[0]!.Value, 9); // ladle 3 can wait a minute
        Assert.Equal(6, pour.MostLate[2]!.Value, 9); // without ladle 3 it is ladle 2
        Assert.Empty(pour.FailWhenLate(0, 0.9));
        Assert.Equal(["3"], pour.FailWhenLate(0, 2).Select(part => part.Ladle.Name));
        Assert.Equal(["1", "2", "4"], pour.FailWhenLate(2, 8).Select(part => part.Ladle.Name));
    }

    [Fact]
    public void JointPour_OfGreyIron_HasNoMagnesium()
    {
        var pour = JointPour.Of([Ladle with { MgPercent = null, MgFloorPercent = null }]);

        Assert.Null(pour.MixedMgPercent);
        Assert.Null(pour.Parts[0].MgAtEndPercent);
        Assert.Equal(JointLimit.Inoculation, pour.Parts[0].First);
    }

    private static (double, double, JointLimit?, double) Rounded(JointPart part) =>
        (part.LatestStart, Math.Round(part.EarliestStart!.Value, 9), part.First, Math.Round(part.SlackMinutes!.Value, 9));
}
