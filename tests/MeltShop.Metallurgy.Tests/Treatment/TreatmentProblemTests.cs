using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Tests.Treatment;

public class TreatmentProblemTests
{
    private static readonly TreatmentProblem Good = TreatmentCases.Printed();

    public static TheoryData<string, string, TreatmentProblem> Bad => new()
    {
        { "ironKg", "mass.notPositive", Good with { IronKg = 0 } },
        { "ironKg", "number.notFinite", Good with { IronKg = double.NaN } },
        { "temperatureC", "temperature.notPositive", Good with { TemperatureC = 0 } },
        { "baseAnalysis.Mg", "base.magnesium", Good with { BaseAnalysis = Good.BaseAnalysis.With(Element.Mg, 0.001) } },
        { "targetMgPercent", "percent.negative", Good with { TargetMgPercent = -0.01 } },
        { "targetMgPercent", "percent.over100", Good with { TargetMgPercent = 101 } },
        { "atMinutes", "minutes.negative", Good with { AtMinutes = -1 } },
        { "mgRecoveryPercent", "percent.over100", Good with { Recipe = Good.Recipe with { MgRecoveryPercent = 101 } } },
        { "recoveryTemperatureC", "temperature.notPositive", Good with { Recipe = Good.Recipe with { RecoveryTemperatureC = -5 } } },
        { "fade.perMinute", "fade.negative", Good with { Recipe = Good.Recipe with { Fade = new Fade.Exponential(-0.1) } } },
        { "fade.percentPerMinute", "number.notFinite", Good with { Recipe = Good.Recipe with { Fade = new Fade.Linear(double.PositiveInfinity) } } },
        { "sulphurLeftPercent", "percent.negative", Good with { Recipe = Good.Recipe with { SulphurLeftPercent = -0.001 } } },
        { "alloy.recoveryPercent.Mg", "recovery.magnesium", Recovery(Element.Mg, 50) },
        { "alloy.recoveryPercent.Si", "percent.over100", Recovery(Element.Si, 120) },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void Check_OneBadField_IsNamedByItsPath(string path, string code, TreatmentProblem problem)
    {
        var finding = Assert.Single(problem.Check());

        Assert.Equal((path, code), (finding.Path, finding.Code));
    }

    [Fact]
    public void Check_SoundProblem_FindsNothing()
    {
        Assert.Empty(Good.Check());
        Assert.Empty((Good with { BaseAnalysis = Good.BaseAnalysis.With(Element.Mg, 0) }).Check());
    }

    private static TreatmentProblem Recovery(Element element, double percent) => Good with
    {
        Recipe = Good.Recipe with { Alloy = Good.Recipe.Alloy with { RecoveryPercent = new Dictionary<Element, double> { [element] = percent } } },
    };
}
