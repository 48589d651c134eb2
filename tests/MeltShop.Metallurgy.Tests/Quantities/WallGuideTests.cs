using MeltShop.Metallurgy.Quantities;

namespace MeltShop.Metallurgy.Tests.Quantities;

public class WallGuideTests
{
    public static TheoryData<WallRow> Rows => [.. WallGuide.Rows];

    // J. D. Mullins, Sorelmetal Suggestion Sheet 84, table revised 2004: CE = C + Si/3 of 21 rows. 6–37 mm prints 4.32 where the arithmetic is
    // 4.367: the code keeps the print and works with C and Si.
    [Theory]
    [Printed("J. D. Mullins, Sorelmetal Suggestion Sheet 84, table revised 2004")]
    [MemberData(nameof(Rows))]
    public void Row_PrintedCarbonEquivalent_IsItsArithmetic(WallRow row)
    {
        var difference = Math.Abs(row.CarbonPercent + row.SiliconPercent / 3 - row.PrintedCarbonEquivalent!.Value);

        if ((row.FromMm, row.ToMm) == (6, 37)) Assert.Equal(0.047, difference, 3);
        else Assert.InRange(difference, 0, 0.0135);
    }

    [Theory]
    [InlineData(6, 25, 6, 25)]
    [InlineData(7, 20, 6, 25)]
    [InlineData(3, 3, 3, 3)]
    [InlineData(13, 40, 12, 50)]
    [InlineData(60, 90, 50, 100)]
    public void For_Walls_TakesTheNarrowestRow(double thinnest, double thickest, double from, double to)
    {
        var row = WallGuide.For(thinnest, thickest)!;

        Assert.Equal((from, to), (row.FromMm, row.ToMm));
    }

    [Theory]
    [InlineData(2, 10)]
    [InlineData(50, 120)]
    public void For_WallsOutsideTheTable_HasNone(double thinnest, double thickest) => Assert.Null(WallGuide.For(thinnest, thickest));

    [Fact]
    public void FlotationLimit_ThickerWall_NeverAllowsMore()
    {
        var limits = Enumerable.Range(1, 100).Select(mm => WallGuide.FlotationLimit(mm)!.Value).ToList();

        Assert.All(limits.Zip(limits.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 0.0011));
        Assert.Equal(3.45 + 2.20 / 3 + 0.15, WallGuide.FlotationLimit(50)!.Value, 12);
        Assert.Null(WallGuide.FlotationLimit(101));
    }
}
