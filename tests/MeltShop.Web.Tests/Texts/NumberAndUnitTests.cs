using System.Text.RegularExpressions;
using System.Xml.Linq;
using MeltShop.Web.Components.Units;

namespace MeltShop.Web.Tests.Texts;

/// <summary>A number stays with its unit at the end of a line: between the two stands a blank that does not break, in every text and in all that pages put together.</summary>
public sealed partial class NumberAndUnitTests
{
    [Theory]
    [InlineData("{0} kg", true)]
    [InlineData("of {2} m³.", true)]
    [InlineData("Over 50 mm the card", true)]
    [InlineData("{0} % of the heats", true)]
    [InlineData("{0}\u00a0% of the heats", false)]
    [InlineData("{0} minutes", false)] // a word may stand on a line of its own
    [InlineData("{0} heats", false)]
    [InlineData("mass %", false)]
    public void Pattern_Text_FindsANumberThatCanLoseItsUnit(string text, bool isTorn) => Assert.Equal(isTorn, TornText().IsMatch(text));

    [Theory]
    [InlineData("NumberText.Show(yield) + \" %\"", true)]
    [InlineData("$\"{NumberText.Show(number)} %\"", true)]
    [InlineData("$\"{Show(value)} {Unit}\"", true)]
    [InlineData("<dd>@NumberText.Show(density) t/m³</dd>", true)]
    [InlineData("<dd>@NumberText.Show(Plan.TotalCost, 2) @Currency</dd>", true)]
    [InlineData("UnitText.Of(Show(value), Unit)", false)]
    [InlineData("$\"{element.Symbol} %\"", false)] // the head of a column
    public void Pattern_Source_FindsANumberThatCanLoseItsUnit(string line, bool isTorn) => Assert.Equal(isTorn, TornSource().IsMatch(line));

    [Fact]
    public void Texts_All_KeepNumberAndUnitOnALine()
    {
        var files = Directory.EnumerateFiles(Path.Combine(Sources.Root, "src", "MeltShop.Web", "Texts"), "*.resx").ToList();
        Assert.True(files.Count > 20);

        Assert.Empty(files.SelectMany(file => XDocument.Load(file).Root!.Elements("data").Select(data => data.Element("value")!.Value)
            .Where(value => TornText().IsMatch(value)).Select(value => $"{Path.GetFileName(file)}: {value}")));
    }

    /// <summary>A number with decimals is handed in, or its sign would be a point in every language.</summary>
    [Fact]
    public void Texts_All_HaveNoDecimalSignOfTheirOwn()
    {
        // Names, and what may be typed with either sign.
        string[] known = ["Rp0.2", "type 3.1", "write 1250", "point: 3.61"];
        var files = Directory.EnumerateFiles(Path.Combine(Sources.Root, "src", "MeltShop.Web", "Texts"), "*.resx").ToList();

        Assert.Empty(files.SelectMany(file => XDocument.Load(file).Root!.Elements("data").Select(data => data.Element("value")!.Value)
            .Where(value => OwnDecimals().IsMatch(value) && !known.Any(value.Contains)).Select(value => $"{Path.GetFileName(file)}: {value}")));
    }

    [Fact]
    public void Pages_All_KeepNumberAndUnitOnALine()
    {
        var files = new[] { "*.razor", "*.cs" }.SelectMany(kind => Sources.Files("MeltShop.Web", kind)).Select(file => (File: file, Name: Sources.Name(file).Replace('\\', '/')))
            .Where(file => file.Name.Contains("/Pages/", StringComparison.Ordinal) || file.Name.Contains("/Components/", StringComparison.Ordinal))
            // As it is kept beside a reading and compared with others: not what a page prints.
            .Where(file => !file.Name.EndsWith("/Entries/FigureFields.cs", StringComparison.Ordinal)).ToList();
        Assert.True(files.Count > 200, $"{files.Count} files");

        Assert.Empty(files.SelectMany(file => File.ReadLines(file.File).Where(line => TornSource().IsMatch(line)).Select(line => $"{file.Name}: {line.Trim()}")));
    }

    [Fact]
    public void NumberAndUnit_Joined_HaveABlankThatDoesNotBreak()
    {
        Assert.Equal("3.2\u00a0%", UnitText.Percent("3.2"));
        Assert.Equal("0.9", UnitText.Of("0.9", ""));
    }

    [GeneratedRegex(@"[0-9]\.[0-9]")]
    private static partial Regex OwnDecimals();

    /// <summary>A figure or a placeholder, a blank, and the sign of a unit.</summary>
    [GeneratedRegex(@"[0-9}] (%|(°[CF]|kg|lb|mm|m³|m|min|s|h|kWh|kW|g|t|K|MPa|sh tn)(?![\w/-]))")]
    private static partial Regex TornText();

    /// <summary>A printed number, a blank, and a unit or what holds one.</summary>
    [GeneratedRegex(@"\) \+ "" (%|mm|min|m³|kg|K|h|s)""|(Show|ShowAtLeast|ShowBeside|Number)\([^{}]*\)\} (%|mm|min|m³|K|h|s|\{[\w.]*(Unit|Sign|Currency|Shown|unit|currency)\b)|NumberText\.\w+\([^@]*\) (%|mm|min|t/m³|K|@[\w.]*(Unit|Sign|Currency|Shown)\b)")]
    private static partial Regex TornSource();
}
