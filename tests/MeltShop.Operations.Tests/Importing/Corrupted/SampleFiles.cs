using System.Globalization;
using System.IO.Compression;
using System.Text;
using MeltShop.Operations.Importing.Maps;
using MeltShop.Records.Laboratory;

namespace MeltShop.Operations.Tests.Importing.Corrupted;

/// <summary>Files as instruments write them, and the maps that read them; all figures are invented.</summary>
public static class SampleFiles
{
    public const string Headings = "Nr;Heat;Ladle;Kind;Coin;Taken;Burn;C;Si;Mn;Mg ppm;Note";

    public static ColumnMap Map { get; } = new()
    {
        Instrument = "spark",
        Layout = RowLayout.BurnPerRow,
        DecimalSign = DecimalSign.Point,
        Separator = ';',
        TimeForm = "yyyy-MM-dd HH:mm:ss",
        NotMeasuredTexts = "- n.m.",
        KindTexts = [new("furnace", SampleKind.Bath), new("second", SampleKind.AfterCorrection), new("last", SampleKind.LastMetal)],
        Columns =
        [
            new(0, "Nr", ColumnRole.SampleNumber), new(1, "Heat", ColumnRole.Heat), new(2, "Ladle", ColumnRole.Ladle), new(3, "Kind", ColumnRole.Kind),
            new(4, "Coin", ColumnRole.Coin), new(5, "Taken", ColumnRole.TakenAt), new(6, "Burn", ColumnRole.Burn), new(7, "C", ColumnRole.Element, "C"),
            new(8, "Si", ColumnRole.Element, "Si"), new(9, "Mn", ColumnRole.Element, "Mn"),
            new(10, "Mg ppm", ColumnRole.Element, "Mg", ElementUnit.PartsPerMillion), new(11, "Note", ColumnRole.Remarks),
        ],
    };

    /// <summary>The same with decimal commas.</summary>
    public static ColumnMap CommaMap { get; } = Map with { DecimalSign = DecimalSign.Comma };

    public static byte[] Text(params string[] rows) => Encoding.UTF8.GetBytes(string.Join("\r\n", rows.Prepend(Headings)) + "\r\n");

    /// <summary>So many samples of three burns.</summary>
    public static byte[] Many(int samples, string heat, DateTime takenAt, char sign = '.', string first = "S")
    {
        var rows = Enumerable.Range(0, samples * 3).Select(i => string.Create(CultureInfo.InvariantCulture,
            $"{first}{i / 3};{heat};;second;K{i / 3};{takenAt.AddSeconds(i / 3):yyyy-MM-dd HH:mm:ss};{(i % 3) + 1};{3.5 + (i % 17 * 0.01):F3};{1.5 + (i % 11 * 0.01):F3};0.31;{i % 40};")
            .Replace('.', sign));
        return Text([.. rows]);
    }

    /// <summary>A workbook of one sheet. A text becomes a text cell, a double a number, a DateTime a number shown as an instant.</summary>
    public static byte[] Workbook(params IReadOnlyList<object?>[] rows)
    {
        var sheet = new StringBuilder("""<?xml version="1.0" encoding="UTF-8"?><worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>""");
        for (var r = 0; r < rows.Length; r++)
        {
            sheet.Append(CultureInfo.InvariantCulture, $"<row r=\"{r + 1}\">");
            for (var c = 0; c < rows[r].Count; c++) sheet.Append(CellOf(rows[r][c], $"{(char)('A' + c)}{r + 1}"));
            sheet.Append("</row>");
        }

        return Pack(sheet.Append("</sheetData></worksheet>").ToString());
    }

    public static byte[] Pack(string sheet) => Pack(Parts(sheet));

    public static byte[] Pack(IEnumerable<(string Name, byte[] Content)> parts)
    {
        using var file = new MemoryStream();
        using (var archive = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, content) in parts)
            {
                using var entry = archive.CreateEntry(name, CompressionLevel.Optimal).Open();
                entry.Write(content);
            }
        }

        return file.ToArray();
    }

    public static IReadOnlyList<(string Name, byte[] Content)> Parts(string sheet) =>
    [
        .. new (string Name, string Content)[]
        {
            ("[Content_Types].xml", """<?xml version="1.0"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/><Override PartName="/xl/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"/></Types>"""),
            ("_rels/.rels", """<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="r1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument" Target="xl/workbook.xml"/></Relationships>"""),
            ("xl/workbook.xml", """<?xml version="1.0"?><workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets><sheet name="Burns" sheetId="1" r:id="r1"/></sheets></workbook>"""),
            ("xl/_rels/workbook.xml.rels", """<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="r1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="r2" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles" Target="styles.xml"/></Relationships>"""),
            ("xl/styles.xml", """<?xml version="1.0"?><styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="22" applyNumberFormat="1"/></cellXfs></styleSheet>"""),
            ("xl/worksheets/sheet1.xml", sheet),
        }.Select(p => (p.Name, Encoding.UTF8.GetBytes(p.Content))),
    ];

    private static string CellOf(object? value, string place) => value switch
    {
        null => "",
        double number => string.Create(CultureInfo.InvariantCulture, $"<c r=\"{place}\"><v>{number:R}</v></c>"),
        DateTime instant => string.Create(CultureInfo.InvariantCulture, $"<c r=\"{place}\" s=\"1\"><v>{instant.ToOADate():R}</v></c>"),
        _ => $"<c r=\"{place}\" t=\"inlineStr\"><is><t xml:space=\"preserve\">{System.Security.SecurityElement.Escape(value.ToString())}</t></is></c>",
    };
}
