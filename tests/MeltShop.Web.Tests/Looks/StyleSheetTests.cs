using System.Text.RegularExpressions;
using MeltShop.Web.Tests.Repository;

namespace MeltShop.Web.Tests.Looks;

/// <summary>Colours and letters have one home, so that every look has every page.</summary>
public partial class StyleSheetTests
{
    private static IEnumerable<string> Sheets => Checkout.FilesEndingIn(".css").Where(file => file.StartsWith("src/MeltShop.Web/", StringComparison.Ordinal));

    [Fact]
    public void Colour_OutsideTheTheme_IsNamedByItsTask() => Offences.None(
        from file in Sheets
        where !file.EndsWith("/theme.css", StringComparison.Ordinal) && !file.EndsWith("/contrast.css", StringComparison.Ordinal)
        from line in Checkout.Lines(file)
        where Colour().IsMatch(line)
        select $"{file}: {line.Trim()}");

    [Fact]
    public void Colours_OfHighContrast_AreThoseOfTheTheme()
    {
        string[] Names(string sheet) => [.. ColourName().Matches(Checkout.Read($"src/MeltShop.Web/wwwroot/{sheet}.css")).Select(match => match.Groups[1].Value).Distinct().Order()];

        Assert.NotEmpty(Names("theme"));
        Assert.Equal(Names("theme"), Names("contrast"));
    }

    [Fact]
    public void Sheets_All_AreLinkedByTheDocument()
    {
        var document = Checkout.Read("src/MeltShop.Web/Components/App.razor");

        Offences.None(Sheets.Where(file => file.Contains("/wwwroot/", StringComparison.Ordinal) && !document.Contains($"\"{Path.GetFileName(file)}\"", StringComparison.Ordinal)));
    }

    [GeneratedRegex(@"#[0-9a-fA-F]{3,8}\b|\brgba?\(|\bhsla?\(|:\s*(white|black|red|gray|grey)\b")]
    private static partial Regex Colour();

    [GeneratedRegex(@"(--[a-z-]+): light-dark\(")]
    private static partial Regex ColourName();
}
