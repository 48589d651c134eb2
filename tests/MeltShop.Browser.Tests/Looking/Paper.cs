using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace MeltShop.Browser.Tests.Looking;

/// <summary>What comes out of a printer.</summary>
internal static class Paper
{
    /// <summary>The papers of the world's printers.</summary>
    public static readonly string[] Formats = ["A4", "Letter"];

    /// <summary>The words of each sheet, and that it is the paper that lay there.</summary>
    public static async Task<IReadOnlyList<string>> PrintAsync(this IPage page, string format)
    {
        using var document = PdfDocument.Open(await page.PdfAsync(new() { Format = format, PreferCSSPageSize = true }));
        var sheets = document.GetPages().ToList();
        Assert.All(sheets, sheet => Assert.Equal(format == "A4" ? 842 : 792, sheet.Height, 1d)); // points
        return [.. sheets.Select(sheet => string.Join(' ', sheet.GetWords().Select(word => word.Text)))];
    }
}
