using MeltShop.Metallurgy.Grades;

namespace MeltShop.Metallurgy.Tests.Grades;

public class PropertyVerdictTests
{
    // EN 1563, minima of EN-GJS-500-7: 500/320/7 up to 30 mm, 450/300/7 over 30 up to 60 mm.
    [Theory]
    [Printed("EN 1563:1997, mechanical properties measured on test pieces from cast samples")]
    [InlineData(25, 500, 320, 7, true)]
    [InlineData(25, 499.9, 320, 7, false)]
    [InlineData(25, 500, 319.9, 7, false)]
    [InlineData(25, 500, 320, 6.9, false)]
    [InlineData(30, 460, 310, 7, false)]
    [InlineData(31, 460, 310, 7, true)]
    public void Tensile_OfGrade500_StandsToTheMinimaOfItsWall(double wallMm, double tensile, double proof, double elongation, bool meets)
    {
        var verdicts = Of("EN-GJS-500-7", wallMm, (CastProperty.TensileMPa, tensile), (CastProperty.ProofMPa, proof), (CastProperty.ElongationPercent, elongation));

        Assert.Equal(3, verdicts.Count);
        Assert.Equal(meets, verdicts.All(v => v.Standing == PropertyStanding.Meets));
        Assert.Equal(!meets, verdicts.Any(v => v.Standing == PropertyStanding.Fails));
    }

    [Fact]
    public void Property_AskedForAndNotTested_IsNotMet()
    {
        var verdict = Of("EN-GJS-500-7", 25, (CastProperty.TensileMPa, 520)).Single(v => v.Property == CastProperty.ElongationPercent);

        Assert.Equal((PropertyStanding.NotTested, null), (verdict.Standing, verdict.Value));
    }

    [Fact]
    public void Property_NotAskedFor_IsLeftToAPerson()
    {
        var verdicts = Of("EN-GJS-500-7", 25, (CastProperty.HardnessHbw, 500), (CastProperty.NodularityPercent, 40));

        Assert.All(verdicts.Where(v => v.Value is not null), v => Assert.Equal(PropertyStanding.Judged, v.Standing));
        Assert.Equal(2, verdicts.Count(v => v.Value is not null));
    }

    // EN 1563, EN-GJS-400-18-LT: mean of three 12 J and no single bar under 9 J at -20 °C, up to 30 mm.
    [Theory]
    [Printed("EN 1563:1997, minimum impact energy on V-notched test pieces")]
    [InlineData(12, 9, PropertyStanding.Meets, PropertyStanding.Meets)]
    [InlineData(11.9, 9, PropertyStanding.Fails, PropertyStanding.Meets)]
    [InlineData(12.5, 8.9, PropertyStanding.Meets, PropertyStanding.Fails)]
    public void Impact_OfTheColdGrade_AsksForTheMeanAndTheLeastBar(double mean, double single, PropertyStanding ofMean, PropertyStanding ofSingle)
    {
        var verdicts = Of("EN-GJS-400-18-LT", 25, (CastProperty.ImpactMeanJ, mean), (CastProperty.ImpactSingleJ, single)).ToDictionary(v => v.Property);

        Assert.Equal((ofMean, ofSingle), (verdicts[CastProperty.ImpactMeanJ].Standing, verdicts[CastProperty.ImpactSingleJ].Standing));
    }

    [Fact]
    public void Grade_WithoutAStandard_LeavesEverythingToAPerson()
    {
        var verdicts = PropertyVerdict.Of(null, 25, SampleType.CastSample, new Dictionary<CastProperty, double> { [CastProperty.TensileMPa] = 10 });

        Assert.Equal(PropertyStanding.Judged, Assert.Single(verdicts).Standing);
    }

    [Fact]
    public void Piece_CutFromTheCasting_HasExpectedValuesAndNoMinima() =>
        Assert.Empty(PropertyVerdict.Of(GradeProperties.For("EN-GJL-250"), 25, SampleType.ExpectedInCasting, new Dictionary<CastProperty, double>()));

    private static IReadOnlyList<PropertyVerdict> Of(string grade, double wallMm, params (CastProperty Property, double Value)[] values) =>
        PropertyVerdict.Of(GradeProperties.For(grade), wallMm, SampleType.CastSample, values.ToDictionary(v => v.Property, v => v.Value));
}
