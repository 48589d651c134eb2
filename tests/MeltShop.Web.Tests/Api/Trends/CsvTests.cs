using MeltShop.Web.Api.Trends;

namespace MeltShop.Web.Tests.Api.Trends;

public sealed class CsvTests
{
    [Theory]
    [InlineData("=1+1", "\"'=1+1\"")]
    [InlineData("+1", "\"'+1\"")]
    [InlineData("-1", "\"'-1\"")]
    [InlineData("@SUM(A1)", "\"'@SUM(A1)\"")]
    [InlineData("  =1", "\"'  =1\"")]
    [InlineData("\t=1", "\"'\t=1\"")]
    [InlineData("17", "17")]
    [InlineData("a,b", "\"a,b\"")]
    [InlineData("say \"17\"", "\"say \"\"17\"\"\"")]
    [InlineData("a\nb", "\"a\nb\"")]
    [InlineData("", "")]
    public void Text_ThatIsAFormulaOrHoldsAMark_IsHarmlessAndQuoted(string text, string cell) => Assert.Equal(cell + "\r\n", Csv.Line(text));

    [Fact]
    public void Line_OfNumbersAndInstants_HasAPointWhateverTheCulture()
    {
        var before = System.Globalization.CultureInfo.CurrentCulture;
        System.Globalization.CultureInfo.CurrentCulture = System.Globalization.CultureInfo.GetCultureInfo("de-DE");
        try
        {
            Assert.Equal("H-1,2026-03-02T06:00:00Z,-3.65,\r\n", Csv.Line("H-1", new DateTimeOffset(2026, 3, 2, 6, 0, 0, TimeSpan.Zero), -3.65, null));
        }
        finally
        {
            System.Globalization.CultureInfo.CurrentCulture = before;
        }
    }
}
