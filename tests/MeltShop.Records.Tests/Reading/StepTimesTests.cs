using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Heats;

namespace MeltShop.Records.Tests.Reading;

public sealed class StepTimesTests
{
    private static readonly DateTimeOffset Start = new(2026, 3, 2, 6, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Minutes_OfAHeatInItsBath_AreThoseOfEachStepAndThoseSoFar() => Assert.Equal(
        [(HeatState.Charging, 45), (HeatState.Bath, 12.5)], Minutes(57.5, (HeatState.Bath, 45), (HeatState.Charging, 0)));

    [Fact]
    public void Minutes_OfAnEndedHeat_DoNotGoOn() => Assert.Equal(
        [(HeatState.Charging, 45), (HeatState.Bath, 30), (HeatState.Tapping, 15)],
        Minutes(600, (HeatState.Charging, 0), (HeatState.Bath, 45), (HeatState.Tapping, 75), (HeatState.Closed, 90)));

    /// <summary>A sample was moved to the heat that it is of: this one was charging all the time.</summary>
    [Fact]
    public void Minutes_OfAStateThatWasGoneThroughTwice_AreTheSum() => Assert.Equal(
        [(HeatState.Charging, 50), (HeatState.Bath, 10)], Minutes(60, (HeatState.Charging, 0), (HeatState.Bath, 40), (HeatState.Charging, 50)));

    [Fact]
    public void Minutes_WithoutABathSample_SayNothingOfTheBath() => Assert.Equal(
        [(HeatState.Charging, 80), (HeatState.Tapping, 5)], Minutes(85, (HeatState.Charging, 0), (HeatState.Tapping, 80)));

    [Fact]
    public void Minutes_OfAStartThatWasPutRight_CountFromThere()
    {
        Assert.Equal([(HeatState.Charging, 55), (HeatState.Bath, 5)], Minutes(50, Start.AddMinutes(-10), (HeatState.Charging, 0), (HeatState.Bath, 45)));
        Assert.Equal([(HeatState.Charging, 35), (HeatState.Bath, 5)], Minutes(50, Start.AddMinutes(10), (HeatState.Charging, 0), (HeatState.Bath, 45)));
    }

    [Fact]
    public void Minutes_OfAStepThatWouldHaveEndedBeforeItBegan_AreNotSaid() =>
        Assert.Equal([(HeatState.Bath, 20)], Minutes(65, Start.AddMinutes(50), (HeatState.Charging, 0), (HeatState.Bath, 45)));

    private static List<(HeatState, double)> Minutes(double now, params (HeatState State, double Minute)[] steps) => Minutes(now, Start, steps);

    private static List<(HeatState, double)> Minutes(double now, DateTimeOffset startedAt, params (HeatState State, double Minute)[] steps) =>
        [.. StepTimes.Minutes(startedAt, steps.Select(step => new StepTime(step.State, Start.AddMinutes(step.Minute))), Start.AddMinutes(now)).OrderBy(one => one.Key).Select(one => (one.Key, one.Value))];
}
