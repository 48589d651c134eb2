using MeltShop.Operations.Importing;
using MeltShop.Operations.Importing.Files;
using MeltShop.Operations.Tests.Importing.Corrupted;

namespace MeltShop.Operations.Tests.Importing;

public sealed class WorkbookTests
{
    private static readonly DateTime Taken = new(2026, 3, 2, 7, 0, 0, DateTimeKind.Unspecified);

    [Fact]
    public void Workbook_WithNumbersInstantsAndTexts_ReadsAsWhatItsCellsHold()
    {
        var file = Read(SampleFiles.Workbook(
            SampleFiles.Headings.Split(';'),
            ["7", "H1", null, "furnace", "K7", Taken, 1.0, 3.5225, "<2.1", "-", 410.0, "note"],
            [8.0, "H1", null, "furnace", null, "2026-03-02 07:05:00", 1.0, 3.6, "1,5", null, null, null]));

        Assert.Null(file.Refusal);
        var sample = file.Samples.Single();
        Assert.Equal(("7", new DateTimeOffset(2026, 3, 2, 6, 0, 0, TimeSpan.Zero), 2), (sample.Subject.Number, sample.TakenAt, sample.Line));
        Assert.Equal([("C", 3.5225, false, "3.5225"), ("Si", 2.1, true, "<2.1"), ("Mg", 0.041, false, "410")], sample.Rows[0].Readings.Select(r => (r.Element, Math.Round(r.Percent, 12), r.BelowDetection, r.InstrumentText)));
        Assert.Equal((3, "Si", "1,5", "importNumber.otherSign"), file.Faults.Select(f => (f.Line, f.Column, f.Text, f.Code)).Single());
    }

    [Fact]
    public void Workbook_WithANumberWhereTheInstantBelongs_IsNotGuessedAt()
    {
        var file = Read(SampleFiles.Workbook(SampleFiles.Headings.Split(';'), ["7", "H1", null, "furnace", "K7", 46083.29, 1.0, 3.5, null, null, null, null]));
        Assert.Equal("importTime.unreadable", file.Faults.Single().Code);
    }

    [Fact]
    public void Workbook_ThatUnpacksToFarMoreThanItIs_IsNotOpened()
    {
        var parts = SampleFiles.Parts("<worksheet/>").Append(("xl/media/big.bin", new byte[64 * 1024 * 1024]));
        Assert.Equal("importFile.bomb", Read(SampleFiles.Pack(parts)).Refusal?.Code);
    }

    [Fact]
    public void Workbook_OfManyParts_IsNotOpened()
    {
        var parts = SampleFiles.Parts("<worksheet/>").Concat(Enumerable.Range(0, FileBounds.MostParts).Select(i => ($"xl/{i}.xml", new byte[] { 1 })));
        Assert.Equal("importFile.parts", Read(SampleFiles.Pack(parts)).Refusal?.Code);
    }

    [Theory]
    [InlineData("<row r=\"1\"><c r=\"XFD1\"><v>1</v></c></row>", "importFile.columns")]
    [InlineData("<row r=\"1048576\"><c r=\"A1048576\"><v>1</v></c></row>", "importFile.rows")]
    public void Workbook_WithACellFarOut_IsNotFilledUpToIt(string rows, string code) =>
        Assert.Equal(code, Read(SampleFiles.Pack(Sheet(rows))).Refusal?.Code);

    [Fact]
    public void Workbook_WithEntitiesThatGrow_IsRefused()
    {
        const string Laughs = """<!DOCTYPE z [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;"><!ENTITY c "&b;&b;&b;&b;&b;&b;&b;&b;">]>""";
        Assert.Equal("importFile.unreadable", Read(SampleFiles.Pack(Laughs + Sheet("<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>&c;</t></is></c></row>"))).Refusal?.Code);
    }

    private static string Sheet(string rows) => $"<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>{rows}</sheetData></worksheet>";

    private static ReadFile Read(byte[] bytes) =>
        ReadFile.Of(bytes, SampleFiles.Map, TimeZoneInfo.FindSystemTimeZoneById("Europe/Berlin"), DateTimeOffset.MaxValue, TestContext.Current.CancellationToken);
}
