using MeltShop.Operations.Ladles;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Ladles;

namespace MeltShop.Operations.Tests.Ladles;

/// <summary>Figures of the test's own, no source: a tap at minute 0, each limit by hand.</summary>
public sealed class PouringLimitsTests
{
    private static readonly DateTimeOffset Tapped = new(2026, 3, 2, 8, 0, 0, TimeSpan.Zero);

    private static readonly LadleTimes Ductile = new()
    {
        TreatedLadleId = 1, State = TreatedLadleState.Pouring, TappedAt = Tapped, ReactionEndedAt = Tapped.AddMinutes(1.5), HasMagnesium = true,
        MgPercent = 0.045, MgLeastPercent = 0.038, MgFloorPercent = 0.030, MinutesToFloor = 15, LeastMinutesToFloor = 5,
        InoculationMinutes = 10, HouseMinutes = 12, LeastPouringC = 1350, HeatLossKPerMinute = 5,
        TemperatureC = 1430, TemperatureAt = Tapped.AddMinutes(2), IsTemperatureMeasured = true,
    };

    [Fact]
    public void Limits_OfATreatedLadle_CountEachFromItsOwnStart()
    {
        var limits = PouringLimits.Of(Ductile);

        Assert.Equal(
            [(PouringLimitKind.Inoculation, 10.0), (PouringLimitKind.HouseRule, 13.5), (PouringLimitKind.Magnesium, 16.5), (PouringLimitKind.Temperature, 18)],
            limits.Select(l => (l.Kind, (l.StopAt - Tapped).TotalMinutes)));
        Assert.Equal(Tapped.AddMinutes(6.5), limits[2].EarliestStopAt);
        Assert.Equal([true, false, false, false], limits.Select(l => l.IsAssumed)); // the inoculant of the card went in during the tap
    }

    [Fact]
    public void Limits_AfterAStreamInoculationAndANewReading_MoveOnlyTheirOwn()
    {
        var limits = PouringLimits.Of(Ductile with { InoculatedAt = Tapped.AddMinutes(6), TemperatureC = 1370, TemperatureAt = Tapped.AddMinutes(7) });

        Assert.Equal(
            [(PouringLimitKind.Temperature, 11.0), (PouringLimitKind.HouseRule, 13.5), (PouringLimitKind.Inoculation, 16), (PouringLimitKind.Magnesium, 16.5)],
            limits.Select(l => (l.Kind, (l.StopAt - Tapped).TotalMinutes)));
    }

    [Fact]
    public void Limits_ReactionNotPressed_CountFromTheStartOfTheTapAndSaySo()
    {
        var limits = PouringLimits.Of(Ductile with { ReactionEndedAt = null, TapStartedAt = Tapped.AddSeconds(-40), State = TreatedLadleState.Tapped });

        var magnesium = limits.Single(l => l.Kind == PouringLimitKind.Magnesium);
        Assert.Equal((Tapped.AddSeconds(-40), true), (magnesium.From, magnesium.IsAssumed));
        Assert.Equal(Tapped.AddSeconds(-40).AddMinutes(12), limits.Single(l => l.Kind == PouringLimitKind.HouseRule).StopAt);
    }

    [Fact]
    public void Limits_MagnesiumUnderItsFloorFromTheStart_AreReachedAtOnce()
    {
        var times = Ductile with { MinutesToFloor = null, LeastMinutesToFloor = null };

        Assert.Equal(PouringLimitKind.Magnesium, PouringLimits.ReachedBefore(times, Tapped.AddMinutes(2))!.Kind);
    }

    [Fact]
    public void Limits_OfGreyIron_HaveNoMagnesium() =>
        Assert.DoesNotContain(PouringLimits.Of(Ductile with { HasMagnesium = false, ReactionEndedAt = null }), l => l.Kind == PouringLimitKind.Magnesium);

    [Fact]
    public void Limits_WhatNobodySaid_IsNoLimit() => Assert.Empty(PouringLimits.Of(new()
    {
        TreatedLadleId = 1, State = TreatedLadleState.Pouring, TappedAt = Tapped, TemperatureC = 1400, TemperatureAt = Tapped,
    }));
}
