using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Statistics;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Laboratory;

namespace MeltShop.Records.Tests.Reading;

/// <summary>Where the limits of a control chart come from, and which checks they find.</summary>
public sealed class ControlSeriesTests
{
    private static readonly ReferenceView Block = new(1, "block", "Block", "invented for a test", true, [new(Element.C, 3.30, 0.02)]);

    [Fact]
    public void Limits_OfFewChecks_StandAboutTheCertifiedValue()
    {
        var series = Assert.Single(ControlSeries.Of(Checks([3.30, 3.31]), [Block], Spark(0.02)));

        Assert.True(series.IsGiven);
        Assert.Equal(3.30, series.Limits!.Centre);
        Assert.Equal(double.Hypot(0.02 / Math.Sqrt(4), 0.01), series.Limits.StandardDeviation, 12); // four burns each
    }

    [Fact]
    public void Limits_WithoutRepeatabilityAndWithFewChecks_AreNone()
    {
        var series = Assert.Single(ControlSeries.Of(Checks([3.30, 3.90]), [Block], Spark(null)));

        Assert.Null(series.Limits);
        Assert.Empty(series.Signals);
        Assert.All(InstrumentState.Of(Spark(null), Checks([3.30, 3.90]), [series]).Verdicts, v => Assert.Equal((false, false), (v.IsJudged, v.IsGood)));
    }

    // ISO 7870-2: ± 3 times the mean moving range over 1.128. Twenty checks that jump by 0.02 each: 0.02/1.128.
    [Fact]
    public void Limits_OfTwentyChecks_ComeFromTheirMovingRangeAndStayWhenLaterOnesWander()
    {
        var series = Assert.Single(ControlSeries.Of(Checks([.. Base, 3.31, 3.40]), [Block], Spark(0.02)));

        Assert.False(series.IsGiven);
        Assert.Equal(3.30, series.Limits!.Centre, 9);
        Assert.Equal(0.02 / 1.128, series.Limits.StandardDeviation, 4); // 1.128 is rounded
        Assert.Equal([(21, RunRule.OneBeyondThree)], series.Signals);
    }

    [Fact]
    public void Verdict_OfNineOnOneSide_IsMovedAndStillGood()
    {
        var checks = Checks([.. Base, .. Enumerable.Repeat(3.31, 10)]);
        var state = InstrumentState.Of(Spark(0.02), checks, ControlSeries.Of(checks, [Block], Spark(0.02)));

        Assert.Equal([Element.C], state.Last!.Moved);
        Assert.True(state.Last.IsGood);
        Assert.Empty(state.Verdicts[20].Moved);
    }

    // g good, b outside its limits, u not judged: one a hour from 0 on.
    [Theory]
    [InlineData("", null, null, false)]
    [InlineData("gg", null, null, false)]
    [InlineData("uu", null, null, false)]
    [InlineData("b", null, null, true)]
    [InlineData("gb", 0, null, true)]
    [InlineData("bg", null, 1, true)]
    [InlineData("ggbbgg", 1, 4, true)]
    [InlineData("gubug", 0, 4, true)]
    [InlineData("gbgggbbg", 4, 7, true)]
    public void Doubt_OfChecks_LastsFromTheLastGoodOneBeforeToTheFirstGoodOneAfter(string checks, int? since, int? until, bool isAny)
    {
        var state = new InstrumentState(Spark(0.02), [.. checks.Select((check, hour) => new ControlVerdict(hour, At(hour), check != 'u' ? [Element.C] : [], check == 'b' ? [Element.C] : [], []))]);

        var last = state.Doubts is [var first, ..] ? first : null;
        Assert.Equal(isAny, last is not null);
        Assert.Equal((since is { } from ? At(from) : null, until is { } to ? At(to) : (DateTimeOffset?)null), (last?.Since, last?.Until));
    }

    [Fact]
    public void Doubt_ThatEnded_StaysBesideALaterOne()
    {
        var state = new InstrumentState(Spark(0.02), [.. "gbgggbbg".Select((check, hour) => new ControlVerdict(hour, At(hour), [Element.C], check == 'b' ? [Element.C] : [], []))]);

        Assert.Equal([(At(4), At(7)), (At(0), At(2))], state.Doubts.Select(d => (d.Since!.Value, d.Until!.Value)));
    }

    /// <summary>Two materials, of which one holds no magnesium: a good check on it says nothing of the magnesium.</summary>
    [Fact]
    public void Doubt_OfAnElement_IsNotEndedByACheckThatDoesNotHoldIt()
    {
        var state = new InstrumentState(Spark(0.02),
        [
            new(1, At(0), [Element.C, Element.Mg], [], []), new(2, At(1), [Element.C, Element.Mg], [Element.Mg], []), new(3, At(2), [Element.C], [], []),
        ]);

        Assert.Equal((At(0), (DateTimeOffset?)null), Assert.Single(state.Doubts.Select(d => (d.Since!.Value, d.Until))));
        Assert.Equal([Element.Mg], state.Doubts[0].Elements);
        Assert.Equal((At(1), false), (state.Last!.At, state.Last.IsGood));
        Assert.Equal([Element.Mg], state.At(At(2))!.Outside);
        Assert.True(state.At(At(0))!.IsGood);
    }

    private static DateTimeOffset At(int hour) => DateTimeOffset.UnixEpoch.AddHours(hour);

    private static IEnumerable<double> Base => Enumerable.Range(0, 20).Select(i => i % 2 == 0 ? 3.29 : 3.31);

    private static InstrumentView Spark(double? repeatability) => new(1, Guid.Empty, "s", "Spark", InstrumentKind.Spark, false, null, true, [new(Element.C, repeatability, null)]);

    private static IReadOnlyList<ControlSampleView> Checks(IEnumerable<double> carbon) =>
    [
        .. carbon.Select((c, i) => new ControlSampleView(
            new Origin(i + 1, "Ida", DateTimeOffset.UnixEpoch.AddHours(i), DateTimeOffset.UnixEpoch.AddHours(i), null, null, false), 1, null, [new(Element.C, c, 4)])),
    ];
}
