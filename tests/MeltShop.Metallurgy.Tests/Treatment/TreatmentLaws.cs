using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Tests.Treatment;

public class TreatmentLaws
{
    [Fact]
    public void Treatment_BackwardThenForward_MeetsTheTargetAtTheMinute() => Law.Holds(TreatmentCases.Any, problem =>
    {
        if (MagnesiumTreatment.Solve(problem) is not { } answer) return;
        var recipe = problem.Recipe;
        var after = MagnesiumTreatment.After(problem, answer.AlloyKg, problem.IronKg);

        Law.Close(problem.TargetMgPercent, after.MgPercentAt(problem.AtMinutes));
        Law.Close(recipe.Fade.Before(problem.TargetMgPercent, problem.AtMinutes), answer.MgAfterTreatmentPercent);
        Law.Close(problem.IronKg, MagnesiumTreatment.LargestIronKg(problem, answer.AlloyKg, problem.TargetMgPercent));
    });

    [Fact]
    public void Treatment_MassAndElements_AreConserved() => Law.Holds(TreatmentCases.Any, problem =>
    {
        var alloyKg = problem.IronKg / 60;
        var after = MagnesiumTreatment.After(problem, alloyKg, problem.IronKg);
        var arrival = problem.Recipe.ArrivalAt(problem.TemperatureC);
        var sulphide = Total(after.Before.ElementKg(Element.S), arrival.ElementKg(Element.S)) - after.AtStart.ElementKg(Element.S);
        var magnesium = alloyKg * arrival.ElementKg(Element.Mg) - after.AtStart.ElementKg(Element.Mg);

        Law.Close(problem.IronKg + alloyKg * arrival.LiquidKg, after.AtStart.Kg + sulphide + magnesium);
        Law.Near(sulphide * Element.Mg.AtomicMass / Element.S.AtomicMass, magnesium);
        Assert.True(sulphide >= -1e-12 && after.AtStart.ElementKg(Element.Mg) >= 0);

        double Total(double iron, double perKilogram) => iron + alloyKg * perKilogram;
    });

    [Fact]
    public void Treatment_ScaleOfTheLadle_DoesNotMatter() => Law.Holds(TreatmentCases.Any, problem =>
    {
        if (MagnesiumTreatment.Solve(problem) is not { } one) return;
        var ten = MagnesiumTreatment.Solve(problem with { IronKg = 10 * problem.IronKg })!;

        Law.Close(10 * one.AlloyKg, ten.AlloyKg);
        Law.Close(one.AlloyPercent, ten.AlloyPercent);
        Law.Close(one.AnalysisAfter.OrZero(Element.Si), ten.AnalysisAfter.OrZero(Element.Si));
    });

    [Fact]
    public void Fade_WithTime_OnlyFalls() => Law.Holds(TreatmentCases.Any, problem =>
    {
        var rows = MagnesiumTreatment.After(problem, problem.IronKg / 50, problem.IronKg).ResidualMg;

        Assert.All(rows.Zip(rows.Skip(1)), pair => Assert.True(pair.Second.Percent <= pair.First.Percent && pair.Second.Percent >= 0));
    });

    [Fact]
    public void Fade_MinutesToAFloor_IsWhereItStands() => Law.Holds(TreatmentCases.Any, problem =>
    {
        var (fade, start, floor) = (problem.Recipe.Fade, problem.TargetMgPercent, problem.TargetMgPercent * 0.7);
        var minutes = fade.MinutesTo(start, floor);
        if (double.IsInfinity(minutes)) return;

        Law.Close(floor, fade.After(start, minutes), 1e-7);
        Law.Close(start, fade.Before(floor, minutes), 1e-7);
        Assert.Equal(0, fade.MinutesTo(floor, start));
    });

    [Fact]
    public void Treatment_MoreAlloy_NeverLeavesLessMagnesium() => Law.Holds(TreatmentCases.Any, problem =>
    {
        var less = MagnesiumTreatment.After(problem, problem.IronKg / 80, problem.IronKg).MgPercent;
        var more = MagnesiumTreatment.After(problem, problem.IronKg / 60, problem.IronKg).MgPercent;

        Assert.True(more >= less);
    });
}
