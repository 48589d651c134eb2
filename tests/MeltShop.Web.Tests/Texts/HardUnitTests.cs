using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace MeltShop.Web.Tests.Texts;

/// <summary>The shop chooses its units: no page and no text of one prints a unit of mass or temperature by itself.</summary>
public sealed partial class HardUnitTests
{
    /// <summary>Where the units are said: the choice itself.</summary>
    private static readonly string[] Choosing = ["Shop.resx"];

    [Theory]
    [InlineData("""<dd>@(NumberText.Show(tap.Kg, 0) + " kg")</dd>""", true)]
    [InlineData("""<dd>@NumberText.Show(tap.Kg, 0) kg</dd>""", true)]
    [InlineData("""<QuantityField Entry="kg" Unit="kg" />""", true)]
    [InlineData("""$"{NumberText.Show(c)} °C" """, true)]
    [InlineData("""LadleFigureKind.Capacity => "kg",""", true)]
    [InlineData("""Unit="@($"{Currency}/t")" """, true)]
    [InlineData("""<dd>@NumberText.Show(price, 2) @Currency/t</dd>""", true)]
    [InlineData("""<dd>@NumberText.Show(density) t/m³</dd>""", false)]
    [InlineData("""<dd>@MassText.Show(tap.Kg, 0)</dd>""", false)]
    [InlineData("""kg = form.Mass("kg", 0, 1);""", false)]
    [InlineData("""@if (Stock is { } kg && kg > 0)""", false)]
    [InlineData("""/// <param name="temperatureC">Bath, °C.</param>""", false)]
    public void Pattern_Line_FindsAHardUnit(string line, bool isHard) => Assert.Equal(isHard, Hard().IsMatch(Said(line)));

    [Fact]
    public void Pages_All_TakeUnitsFromTheShop()
    {
        var files = new[] { "*.razor", "*.cs" }.SelectMany(kind => Sources.Files("MeltShop.Web", kind)).Select(file => (File: file, Name: Sources.Name(file).Replace('\\', '/')))
            .Where(file => file.Name.Contains("/Pages/", StringComparison.Ordinal) || file.Name.Contains("/Components/", StringComparison.Ordinal))
            .Where(file => !file.Name.Contains("/Components/Units/", StringComparison.Ordinal)).ToList();
        Assert.True(files.Count > 200, $"{files.Count} files");

        Assert.Empty(files.SelectMany(file => File.ReadLines(file.File).Where(line => Hard().IsMatch(Said(line))).Select(line => $"{file.Name}: {line.Trim()}")));
    }

    [Fact]
    public void Texts_OfPages_NameNoUnitThatTheShopChooses()
    {
        var texts = Directory.EnumerateFiles(Path.Combine(Sources.Root, "src", "MeltShop.Web", "Texts"), "*.resx").Where(file => !Choosing.Contains(Path.GetFileName(file))).ToList();
        Assert.True(texts.Count > 20);

        Assert.Empty(texts.SelectMany(file => XDocument.Load(file).Root!.Elements("data").Select(data => data.Element("value")!.Value)
            .Where(value => Unit().IsMatch(value)).Select(value => $"{Path.GetFileName(file)}: {value}")));
    }

    private static string Said(string line) => Comment().Replace(line, "");

    [GeneratedRegex("""=> "kg"|Unit="kg"|[ }]kg["<]|[\])] kg\b|°[CF]|[a-zA-Z}]/t[" <]""")]
    private static partial Regex Hard();

    [GeneratedRegex(@"\bkg\b|\blb\b|°[CF]|/t\b")]
    private static partial Regex Unit();

    [GeneratedRegex("//.*$")]
    private static partial Regex Comment();
}
