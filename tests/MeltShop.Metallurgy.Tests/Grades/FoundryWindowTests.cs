using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Grades;

namespace MeltShop.Metallurgy.Tests.Grades;

public class FoundryWindowTests
{
    // Soliman Group, foundry data page: C and Si by grade.
    [Theory]
    [Printed("Soliman Group, foundry data page")]
    [InlineData("EN-GJS-400-15", 3.55, 3.80, 2.60, 2.80)]
    [InlineData("EN-GJS-500-7", 3.50, 3.70, 2.50, 2.70)]
    [InlineData("EN-GJS-600-3", 3.40, 3.70, 2.40, 2.65)]
    [InlineData("EN-GJS-700-2", 3.40, 3.70, 2.40, 2.65)]
    [InlineData("EN-GJL-200", 3.30, 3.60, 2.00, 2.30)]
    [InlineData("EN-GJL-250", 3.20, 3.45, 1.90, 2.10)]
    [InlineData("EN-GJL-300", 3.20, 3.40, 1.85, 2.10)]
    public void For_Grade_HasThePrintedCarbonAndSilicon(string grade, double carbonLeast, double carbonMost, double siliconLeast, double siliconMost)
    {
        var percents = FoundryWindow.For(grade)!.Percents;

        Assert.Equal((carbonLeast, carbonMost), percents[Element.C]);
        Assert.Equal((siliconLeast, siliconMost), percents[Element.Si]);
        Assert.NotNull(GradeProperties.For(grade));
    }

    [Fact]
    public void All_Windows_AreInOrder() => Assert.All(
        FoundryWindow.All.SelectMany(w => w.Percents.Values), p => Assert.False(p.Least > p.Most));

    [Fact]
    [Printed("Soliman Group, foundry data page")]
    public void For_SevenHundred_SaysThatItsSumIsHardlyReachable()
    {
        // The print asks Mn + Cu ≥ 0.80 with Mn ≤ 0.40 and Cu ≤ 0.40: both at their most.
        var window = FoundryWindow.For("EN-GJS-700-2")!;

        Assert.Equal(window.ManganeseAndCopper!.Value.Least!.Value, window.Percents[Element.Mn].Most!.Value + window.Percents[Element.Cu].Most!.Value, 12);
        Assert.NotNull(window.Note);
    }
}
