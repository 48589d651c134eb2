using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Laboratory;

namespace MeltShop.Operations.Tests.Laboratory;

/// <summary>How many heats were inside their window with the first coin; own figures, by hand.</summary>
public sealed class FirstSampleHitsTests
{
    private static readonly GradeView Grade = new(
        1, Guid.Empty, "G1", IronFamily.Ductile, "invented for a test", true, null,
        [
            new(WindowStage.Furnace, "C", 3.60, 3.65, 3.70, 0), new(WindowStage.Furnace, "Si", null, 1.5, 1.6, 0), new(WindowStage.Furnace, "Mn", null, 0.3, null, 0),
            new(WindowStage.Poured, "C", 3.40, 3.5, 3.55, 0),
        ]);

    [Fact]
    public void Percent_OfFirstCoins_CountsTheHeatsThatCanBeJudged()
    {
        // Inside; at a limit, which is inside; carbon low; silicon high; silicon missing; a grey coin without its carbon; a grade that is not known.
        var hits = FirstSampleHits.Of(
            [
                First(("C", 3.65), ("Si", 1.5)), First(("C", 3.60), ("Si", 1.6)), First(("C", 3.59), ("Si", 1.5)), First(("C", 3.65), ("Si", 1.61)),
                First(("C", 3.65)), First(("Si", 1.5)), First(("C", 3.65), ("Si", 1.5)) with { GradeId = 9 },
            ],
            [Grade], []);

        Assert.Equal(new FirstSampleHits(2, 4, 3), hits);
        Assert.Equal(50, hits.Percent);
    }

    [Fact]
    public void Percent_WhereNoHeatCanBeJudged_IsNoneAndNotZero()
    {
        Assert.Null(FirstSampleHits.Of([], [Grade], []).Percent);
        Assert.Null(FirstSampleHits.Of([First(("Si", 1.5))], [Grade], []).Percent);
        Assert.Equal(0, FirstSampleHits.Of([First(("C", 3.9), ("Si", 1.5))], [Grade], []).Percent);
    }

    /// <summary>Carbon was asked from 3.50 on until the change: the coin before it was inside, the same coin after it is not.</summary>
    [Fact]
    public void Percent_OfACoinFromBeforeAChange_IsByTheWindowOfItsTime()
    {
        var change = new WindowChange(1, DateTimeOffset.UnixEpoch.AddDays(1), WindowStage.Furnace, "C", new(WindowStage.Furnace, "C", 3.50, null, 3.70, 0));
        var coin = First(("C", 3.55), ("Si", 1.5));

        Assert.Equal(100, FirstSampleHits.Of([coin], [Grade], [change]).Percent);
        Assert.Equal(0, FirstSampleHits.Of([coin with { At = DateTimeOffset.UnixEpoch.AddDays(2) }], [Grade], [change]).Percent);
        Assert.Equal(0, FirstSampleHits.Of([coin], [Grade], [change with { Stage = WindowStage.Poured }, change with { GradeId = 2 }]).Percent);
    }

    /// <summary>Silicon of less than 1.61 may be inside its most of 1.60 or not; of less than 1.59 it is, and its grade asks for no least.</summary>
    [Fact]
    public void Percent_OfAReadingBelowDetection_CountsTheHeatOnlyWhereThatDecides()
    {
        var over = First(("C", 3.65), ("Si", 1.61)) with { Unseen = [Element.Si] };

        Assert.Equal(new FirstSampleHits(0, 0, 1), FirstSampleHits.Of([over], [Grade], []));
        Assert.Equal(new FirstSampleHits(1, 1, 0), FirstSampleHits.Of([First(("C", 3.65), ("Si", 1.59)) with { Unseen = [Element.Si] }], [Grade], []));
        Assert.Equal(new FirstSampleHits(0, 1, 0), FirstSampleHits.Of([over with { Unseen = [] }], [Grade], []));
    }

    private static FirstSample First(params (string Element, double Percent)[] means) =>
        new(1, 1, 1, DateTimeOffset.UnixEpoch, Analysis.Of(means.Select(m => KeyValuePair.Create(Element.Parse(m.Element), m.Percent))));
}
