using PdfSharp;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace MeltShop.Web.Printing;

/// <summary>An A4 document that is written from top to bottom and takes a new page where one is full.</summary>
internal sealed class Sheet : IDisposable
{
    private const double Margin = 48;
    private const double Line = 15;
    private readonly PdfDocument document = new();
    private readonly XFont plain;
    private readonly XFont bold;
    private readonly XFont large;
    private XGraphics? drawing;
    private double y;

    static Sheet() => GlobalFontSettings.FontResolver = new ShippedFonts();

    public Sheet(string title)
    {
        document.Info.Title = title;
        (plain, bold, large) = (Font(9.5), Font(9.5, XFontStyleEx.Bold), Font(16, XFontStyleEx.Bold));
        Turn();
    }

    private double Width => document.Pages[^1].Width.Point - 2 * Margin;

    public void Title(string words) => Write(words, large, 28);

    /// <summary>A heading, never the last line of a page.</summary>
    public void Heading(string words)
    {
        Room(4 * Line);
        y += 8;
        Write(words, bold, Line + 3);
    }

    /// <summary>Words over as many lines as they take.</summary>
    public void Words(string words)
    {
        foreach (var line in Lines(words, plain, Width)) Write(line, plain, Line);
    }

    /// <summary>A name and what it is.</summary>
    public void Fact(string name, string value)
    {
        var lines = Lines(value, plain, Width - 150);
        Room(lines.Count * Line);
        drawing!.DrawString(name, bold, XBrushes.Black, Margin, y);
        foreach (var line in lines) Write(line, plain, Line, 150);
    }

    /// <summary>A table whose columns share the width; the first row is its head and stands again on each new page.</summary>
    public void Table(IReadOnlyList<double> shares, IReadOnlyList<string> head, IEnumerable<IReadOnlyList<string>> rows)
    {
        Row(shares, head, bold);
        foreach (var row in rows)
        {
            if (Room(Line)) Row(shares, head, bold);
            Row(shares, row, plain);
        }
    }

    /// <summary>A line to sign on.</summary>
    public void Signature(string words)
    {
        Room(60);
        y += 40;
        drawing!.DrawLine(XPens.Black, Margin, y - 12, Margin + 260, y - 12);
        Write(words, plain, Line);
    }

    /// <summary>Ends the document: the foot goes onto every page, then these are its bytes.</summary>
    /// <param name="foot">Of the page's number and the number of pages.</param>
    public byte[] End(Func<int, int, string> foot)
    {
        drawing!.Dispose();
        drawing = null;
        for (var n = 0; n < document.PageCount; n++)
        {
            using var page = XGraphics.FromPdfPage(document.Pages[n]);
            page.DrawString(foot(n + 1, document.PageCount), plain, XBrushes.Black, Margin, document.Pages[n].Height.Point - 30);
        }

        using var bytes = new MemoryStream();
        document.Save(bytes, closeStream: false);
        return bytes.ToArray();
    }

    public void Dispose()
    {
        drawing?.Dispose();
        document.Dispose();
    }

    private void Row(IReadOnlyList<double> shares, IReadOnlyList<string> cells, XFont font)
    {
        var x = Margin;
        var cell = cells.Select((words, n) => Lines(words, font, Width * shares[n] - 6)).ToList();
        Room(cell.Max(lines => lines.Count) * Line);
        for (var n = 0; n < cells.Count; n++)
        {
            for (var l = 0; l < cell[n].Count; l++) drawing!.DrawString(cell[n][l], font, XBrushes.Black, x, y + l * Line);
            x += Width * shares[n];
        }

        y += cell.Max(lines => lines.Count) * Line;
        drawing!.DrawLine(XPens.LightGray, Margin, y - Line + 4, Margin + Width, y - Line + 4);
    }

    private void Write(string words, XFont font, double height, double indent = 0)
    {
        Room(height);
        drawing!.DrawString(words, font, XBrushes.Black, Margin + indent, y);
        y += height;
    }

    /// <summary>True where a new page was taken.</summary>
    private bool Room(double height)
    {
        if (y + height < document.Pages[^1].Height.Point - Margin) return false;
        Turn();
        return true;
    }

    private void Turn()
    {
        drawing?.Dispose();
        var page = document.AddPage();
        page.Size = PageSize.A4;
        drawing = XGraphics.FromPdfPage(page);
        y = Margin + 8;
    }

    private List<string> Lines(string words, XFont font, double width)
    {
        var lines = new List<string> { "" };
        foreach (var word in words.Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Parts(word, font, width)))
        {
            var longer = lines[^1].Length == 0 ? word : $"{lines[^1]} {word}";
            if (lines[^1].Length > 0 && drawing!.MeasureString(longer, font).Width > width) lines.Add(word);
            else lines[^1] = longer;
        }

        return lines;
    }

    // A word that is wider than its place is cut: a hash has no blanks.
    private IEnumerable<string> Parts(string word, XFont font, double width)
    {
        while (drawing!.MeasureString(word, font).Width > width)
        {
            var fits = word.Length - 1;
            while (fits > 1 && drawing.MeasureString(word[..fits], font).Width > width) fits--;
            yield return word[..fits];
            word = word[fits..];
        }

        yield return word;
    }

    private static XFont Font(double size, XFontStyleEx style = XFontStyleEx.Regular) =>
        new(ShippedFonts.Family, size, style, new XPdfFontOptions(PdfFontEncoding.Unicode));
}
