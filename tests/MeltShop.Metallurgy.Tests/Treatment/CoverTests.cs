using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Tests.Treatment;

/// <summary>Cover steel over the alloy: iron to be treated like any other. Figures of the test's own, no source.</summary>
public class CoverTests
{
    private static readonly TreatmentProblem Bare = TreatmentCases.Printed();

    private static readonly TreatmentProblem Covered = Bare with
    {
        Cover = new(new() { Analysis = Analysis.Of((Element.C, 0.05), (Element.S, 0.01)), MetallicYieldPercent = 99 }, 10),
    };

    [Fact]
    public void Solve_WithCover_MeetsTheTargetOnAllOfTheIron()
    {
        var answer = MagnesiumTreatment.Solve(Covered)!;

        Law.Close(Covered.Recipe.Fade.Before(Covered.TargetMgPercent, Covered.AtMinutes), answer.MgAfterTreatmentPercent, 1e-12);
        Assert.True(answer.AlloyKg > MagnesiumTreatment.Solve(Bare)!.AlloyKg * 1.009); // 9.9 kg more on 1000
    }

    [Fact]
    public void After_WithCover_DilutesTheCarbonByItsMass()
    {
        // By hand: 1000 kg at 3.60 % and 9.9 kg at 0.05 % give 3.5652 %, before the alloy's own mass.
        var problem = Covered with { BaseAnalysis = Bare.BaseAnalysis.With(Element.C, 3.60) };
        Assert.Equal(3.5652, MagnesiumTreatment.After(problem, 0, 1000).AtStart.Percent(Element.C), 3);
    }

    /// <summary>By hand: 100 kg at 3.6 % and 1 kg at 0.05 % are 360.05 / 101 = 3.565 %; at 4.0 % they are 3.961 %.</summary>
    [Theory]
    [InlineData(3.6)]
    [InlineData(4.0)]
    public void OnePercentOfCover_TakesAboutSoMuchCarbonAway(double carbon)
    {
        var covered = Metal.Of(100, Analysis.Of((Element.C, carbon))).Plus(Arrival.PerKilogram(new() { Analysis = Analysis.Of((Element.C, 0.05)) }), 1);

        Assert.Equal(TreatmentCover.CarbonTakenPercent, carbon - covered.Percent(Element.C), 2);
    }

    [Fact]
    public void LargestIronKg_WithCover_IsWhereTheFloorIsMet()
    {
        var alloyKg = MagnesiumTreatment.Solve(Covered)!.AlloyKg;
        var largest = MagnesiumTreatment.LargestIronKg(Covered, alloyKg, 0.030);

        Assert.InRange(largest, 1001, 1600);
        Law.Close(0.030, MagnesiumTreatment.After(Covered, alloyKg, largest).MgPercentAt(Covered.AtMinutes), 1e-9);
    }

    [Fact]
    public void LargestIronKg_CoverAloneTakesAllOfTheAlloy_IsZero() => Assert.Equal(0, MagnesiumTreatment.LargestIronKg(
        Covered with { Cover = new(Covered.Cover!.Material, 5000) }, 1, 0.030));
}
