using System.Globalization;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Tests.Components.Fields;

public sealed class NumberTextTests
{
    private static readonly NumberRange Percent = new(0, 100);
    private static readonly NumberRange Mass = new(0, 60000);

    [Theory]
    [InlineData("3.55", 3.55)]
    [InlineData("3,55", 3.55)]
    [InlineData(" 12 ", 12)]
    [InlineData("0.250", 0.25)]
    [InlineData("0,250", 0.25)]
    [InlineData(",5", 0.5)]
    [InlineData("-3.2", -3.2)]
    [InlineData("−3,2", -3.2)]
    [InlineData("00012", 12)]
    [InlineData("1234.5", 1234.5)]
    [InlineData("1234,567", 1234.567)]
    public void Read_CommaOrPoint_IsTheDecimalSign(string text, double value)
    {
        var reading = NumberText.Read(text, new NumberRange());

        Assert.Null(reading.Finding);
        Assert.Equal(value, reading.Value);
    }

    [Theory]
    [InlineData("1 250")]
    [InlineData("1\u00a0250")]
    [InlineData("1\u202f250,5")]
    [InlineData("1'250")]
    [InlineData("1,250.5")]
    [InlineData("1.250,5")]
    [InlineData("1.250.000")]
    public void Read_ThousandsMark_IsRefused(string text) =>
        Assert.Equal("number.thousands", NumberText.Read(text, Mass).Finding?.Code);

    [Theory]
    [InlineData("1,250", 1.25, 1250)]
    [InlineData("1.250", 1.25, 1250)]
    [InlineData("12,500", 12.5, 12500)]
    public void Read_BothReadingsInTheRange_Asks(string text, double first, double second)
    {
        var reading = NumberText.Read(text, Mass);

        Assert.Null(reading.Value);
        Assert.Equal("number.ambiguous", reading.Finding?.Code);
        Assert.Equal([first, second], reading.Choices);
    }

    [Fact]
    public void Read_OnlyTheDecimalReadingInTheRange_TakesIt() => Assert.Equal(1.25, NumberText.Read("1,250", Percent).Value);

    [Fact]
    public void Read_OnlyTheThousandsReadingInTheRange_IsRefusedAsThousands() =>
        Assert.Equal("number.thousands", NumberText.Read("1,250", new NumberRange(1100, 1600)).Finding?.Code);

    [Theory]
    [InlineData("abc")]
    [InlineData("1e3")]
    [InlineData("5,")]
    [InlineData("--5")]
    [InlineData("NaN")]
    [InlineData("∞")]
    [InlineData("٣")]
    [InlineData("3 kg")]
    [InlineData(".")]
    public void Read_NoNumber_IsRefused(string text) => Assert.Equal("number.notANumber", NumberText.Read(text, Mass).Finding?.Code);

    [Fact]
    public void Read_SixteenDigits_IsRefusedRatherThanRounded() =>
        Assert.Equal("number.tooLong", NumberText.Read("1.234567890123456", Percent).Finding?.Code);

    [Fact]
    public void Read_Nothing_IsNeitherZeroNorAFinding()
    {
        var reading = NumberText.Read("  ", Percent);

        Assert.True(reading.IsEmpty);
        Assert.Null(reading.Value);
    }

    [Fact]
    public void Read_BelowMark_IsAnAnswerOnlyWhereTheFieldAllowsIt()
    {
        var allowed = NumberText.Read("<0,003", Percent, allowsBelow: true);

        Assert.True(allowed.IsBelow);
        Assert.Equal(0.003, allowed.Value);
        Assert.Equal("number.belowMark", NumberText.Read("<0,003", Percent).Finding?.Code);
    }

    [Theory]
    [InlineData(1.255, "1.2550")]
    [InlineData(1250, "1250")]
    [InlineData(12.5, "12.5")]
    [InlineData(0.255, "0.255")]
    public void Unmistakable_ReadBack_IsTheSameNumber(double value, string text)
    {
        Assert.Equal(text, NumberText.Unmistakable(value, CultureInfo.InvariantCulture));
        Assert.Equal(value, NumberText.Read(text, new NumberRange()).Value);
    }

    [Theory]
    [InlineData(3.604, 3.60, "3.604")]
    [InlineData(3.6, 3.60, "3.60")]
    [InlineData(3.71, 3.60, "3.71")]
    [InlineData(3.6000004, 3.60, "3.60")]
    public void ShowBeside_ValueNearALimit_NeverPrintsTheLimitForAnotherValue(double value, double limit, string print)
    {
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;

        Assert.Equal(print, NumberText.ShowBeside(value, 2, limit));
    }

    [Theory]
    [InlineData(3.3, "3.30")]
    [InlineData(3.584, "3.584")]
    [InlineData(2, "2.00")]
    public void ShowAtLeast_FewerDecimals_AreFilledAndMoreAreKept(double value, string print)
    {
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;

        Assert.Equal(print, NumberText.ShowAtLeast(value, 2));
    }

    [Theory]
    [InlineData(-12.5, 2, "\u221212.50")]
    [InlineData(-0.004, 2, "0.00")]
    [InlineData(-3.0, null, "\u22123")]
    public void Show_Negative_HasAMinusAndNoHyphenAndNoughtHasNoSign(double value, int? decimals, string print)
    {
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("en-GB");

        Assert.Equal(print, NumberText.Show(value, decimals));
        Assert.Equal("-12.50", NumberText.Show(-12.5, 2, CultureInfo.InvariantCulture)); // for a program
    }

    [Fact]
    public void Negative_ShownInAField_IsReadAsTheSameNumber()
    {
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");

        Assert.Equal(("\u22121,2550", -1.255), (NumberText.Unmistakable(-1.255), NumberText.Read(NumberText.Unmistakable(-1.255), new()).Value));
        Assert.Equal("\u22122,00", NumberText.ShowAtLeast(-2, 2));
    }

    [Fact]
    public void Show_German_HasACommaAndNoThousandsMark() =>
        Assert.Equal("12345,678", NumberText.Show(12345.678, null, CultureInfo.GetCultureInfo("de-DE")));
}
