using System.Text;
using MeltShop.Operations.Importing;
using MeltShop.Operations.Importing.Maps;
using MeltShop.Operations.Tests.Importing.Corrupted;
using MeltShop.Records.Laboratory;

namespace MeltShop.Operations.Tests.Importing;

public sealed class ReadFileTests
{
    private static readonly DateTimeOffset Latest = new(2026, 12, 31, 0, 0, 0, TimeSpan.Zero);

    [Fact]
    public void ReadFile_OfBurns_BringsThemTogetherInTheirOrder()
    {
        var file = Read(SampleFiles.Text(
            "7;H1;L1;LAST;K7;2026-03-02 07:00:10;2;3.52;2.41;-;410;",
            "7;H1;L1;last;K7;2026-03-02 07:00:00;1;3.50;2.40;n.m.;<20;at the last mould",
            "8;H1;;furnace;;2026-07-02 07:00:00;1;3.60;1.50;0.31;;"));

        Assert.Null(file.Refusal);
        Assert.Empty(file.Faults);
        Assert.Equal((3, 2), (file.Rows, file.Samples.Count));
        var last = file.Samples[0];
        Assert.Equal((SampleKind.LastMetal, "K7", "L1", "at the last mould", false), (last.Subject.Kind, last.Subject.Coin, last.Subject.Ladle, last.Remarks, last.IsMeanOnly));
        Assert.Equal(new DateTimeOffset(2026, 3, 2, 6, 0, 0, TimeSpan.Zero), last.TakenAt); // winter in Berlin
        Assert.Equal([3, 2], last.Rows.Select(r => r.Line));
        Assert.Equal([("C", 3.50, false, "3.50"), ("Si", 2.40, false, "2.40"), ("Mg", 0.002, true, "<20")], last.Rows[0].Readings.Select(r => (r.Element, r.Percent, r.BelowDetection, r.InstrumentText)));
        Assert.Equal(0.041, last.Rows[1].Readings.Single(r => r.Element == "Mg").Percent, 12);
        Assert.Equal("7;H1;L1;last;K7;2026-03-02 07:00:00;1;3.50;2.40;n.m.;<20;at the last mould", last.Rows[0].Text);
        Assert.Equal(new DateTimeOffset(2026, 7, 2, 5, 0, 0, TimeSpan.Zero), file.Samples[1].TakenAt); // and summer
        Assert.DoesNotContain(file.Samples[1].Rows[0].Readings, r => r.Element == "Mg"); // an empty cell was not measured
    }

    [Theory]
    [InlineData("1;H1;;furnace;K;2026-03-02 07:00:00;1;3,6;1.5;0.3;;", "C", "3,6", "importNumber.otherSign")]
    [InlineData("1;H1;;furnace;K;2026-03-02 07:00:00;0;3.6;1.5;0.3;;", "Burn", "0", "importBurn.number")]
    [InlineData("1;H1;;furnace;K;2026-03-02 07:00:00;1.5;3.6;1.5;0.3;;", "Burn", "1.5", "importBurn.number")]
    [InlineData("1;H1;;furnace;K;02.03.2026 07:00;1;3.6;1.5;0.3;;", "Taken", "02.03.2026 07:00", "importTime.unreadable")]
    [InlineData("1;H1;;furnace;K;2026-03-29 02:30:00;1;3.6;1.5;0.3;;", "Taken", "2026-03-29 02:30:00", "importTime.never")]
    [InlineData("1;H1;;furnace;K;2026-10-25 02:30:00;1;3.6;1.5;0.3;;", "Taken", "2026-10-25 02:30:00", "importTime.twice")]
    [InlineData("1;H1;;furnace;K;2027-03-02 07:00:00;1;3.6;1.5;0.3;;", "Taken", "2027-03-02 07:00:00", "time.future")]
    [InlineData("1;H1;;mould;K;2026-03-02 07:00:00;1;3.6;1.5;0.3;;", "Kind", "mould", "importKind.unknown")]
    [InlineData("1;H1;;;K;2026-03-02 07:00:00;1;3.6;1.5;0.3;;", "Kind", "", "importCell.missing")]
    [InlineData("1;;;furnace;K;2026-03-02 07:00:00;1;3.6;1.5;0.3;;", "Heat", "", "importCell.missing")]
    [InlineData(";H1;;furnace;K;2026-03-02 07:00:00;1;3.6;1.5;0.3;;", "Nr", "", "importCell.missing")]
    [InlineData("1;H1;;furnace;K;2026-03-02 07:00:00;1;;;-;;", "", "1;H1;;furnace;K;2026-03-02 07:00:00;1;;;-;;", "burn.empty")]
    [InlineData("1;H1;;furnace;K;2026-03-02 07:00:00;1;60;50;0.3;;", "", "1;H1;;furnace;K;2026-03-02 07:00:00;1;60;50;0.3;;", "analysis.sum")]
    [InlineData("1;H1;;furnace", "", "1;H1;;furnace", "importRow.short")]
    [InlineData("1;H1;;fur\"nace;K;2026-03-02 07:00:00;1;3.6;1.5;0.3;;", "", "1;H1;;fur\"nace;K;2026-03-02 07:00:00;1;3.6;1.5;0.3;;", "importRow.quotes")]
    public void ReadFile_WithAFaultyRow_SaysWhereAndWhyAndTakesTheOthers(string row, string column, string text, string code)
    {
        var file = Read(SampleFiles.Text("9;H1;;furnace;K;2026-03-02 07:00:00;1;3.6;1.5;0.3;;", row));

        Assert.Equal((3, column, text, code), file.Faults.Select(f => (f.Line, f.Column, f.Text, f.Code)).Single());
        Assert.Equal("9", file.Samples.Single().Subject.Number);
    }

    [Theory]
    [InlineData("1;H1;;furnace;K;2026-03-02 07:00:00;2;3.6;x;0.3;;", "importSample.faultyRow")]
    [InlineData("1;H2;;furnace;K;2026-03-02 07:00:00;2;3.6;1.5;0.3;;", "importSample.differs")]
    [InlineData("1;H1;;furnace;K;2026-03-02 07:00:00;1;3.6;1.5;0.3;;", "importBurn.twice")]
    public void ReadFile_WithAFaultInOneBurn_TakesNoneOfItsSample(string second, string code)
    {
        var file = Read(SampleFiles.Text("1;H1;;furnace;K;2026-03-02 07:00:00;1;3.6;1.5;0.3;;", second));

        Assert.Empty(file.Samples);
        Assert.Contains((2, code), file.Faults.Select(f => (f.Line, f.Code)));
        Assert.Equal([2, 3], file.Faults.Select(f => f.Line).Distinct());
    }

    [Fact]
    public void ReadFile_OfMeans_IsOneBurnASample()
    {
        var map = SampleFiles.Map with { Layout = RowLayout.MeanPerRow };
        var file = Read(SampleFiles.Text("1;H1;;furnace;K;2026-03-02 07:00:00;1;3.6;1.5;0.3;;", "2;H1;;furnace;K;2026-03-02 07:00:00;1;3.6;1.5;0.3;;", "2;H1;;furnace;K;2026-03-02 07:00:00;2;3.6;1.5;0.3;;"), map);

        Assert.True(file.Samples.Single().IsMeanOnly);
        Assert.Equal([(3, "importSample.twice"), (4, "importSample.twice")], file.Faults.Select(f => (f.Line, f.Code)));
    }

    [Fact]
    public void ReadFile_WithoutANumberAndWithTheInstantInTwoColumns_KnowsTheCoin()
    {
        var map = SampleFiles.Map with
        {
            HeadingLine = 0, Separator = ',', TimeForm = "dd.MM.yyyy HH:mm", UsualKind = SampleKind.Bath, Coding = TextCoding.Western,
            Columns = [new(0, "", ColumnRole.TakenAt), new(1, "", ColumnRole.TakenAt), new(2, "", ColumnRole.Furnace), new(3, "", ColumnRole.Coin), new(4, "", ColumnRole.Element, "C"), new(5, "", ColumnRole.Remarks)],
        };
        var file = Read(Encoding.Latin1.GetBytes("02.03.2026,07:00,F1,K1,3.61,\"gr\u00fcn, \"\"hei\u00df\"\"\"\n\n02.03.2026,07:00,F1,K1,3.63,\n02.03.2026,07:01,F1,K1,3.65,\n"), map);

        Assert.Empty(file.Faults);
        Assert.Equal([2, 1], file.Samples.Select(s => s.Rows.Count));
        Assert.Equal(("F1", "K1", "grün, \"heiß\""), (file.Samples[0].Subject.Furnace, file.Samples[0].Subject.Coin, file.Samples[0].Remarks));
        Assert.Equal([1, 3, 4], file.Samples.SelectMany(s => s.Rows).Select(r => r.Line));
    }

    [Theory]
    [InlineData("", "importFile.empty")]
    [InlineData("Nr;Heat;Ladle;Kind;Coin;Taken;Burn;C;Si;Mn;Mg ppm;Note\n", "importFile.empty")]
    [InlineData("Nr;Heat;Ladle;Kind;Coin;Taken;Burn;Si;C;Mn;Mg ppm;Note\n1;H1;;furnace;K;2026-03-02 07:00:00;1;3.6;1.5;0.3;;", "importFile.heading")]
    [InlineData("\n", "importFile.noHeadings")]
    [InlineData("a\0b", "importFile.noText")]
    [InlineData("PK\u0003\u0004 and no more", "importFile.unreadable")]
    public void ReadFile_ThatIsNotForTheMap_IsRefusedWhole(string text, string code) => Refused(Encoding.UTF8.GetBytes(text), code);

    [Fact]
    public void ReadFile_InAnotherCoding_IsRefusedWhole() => Refused([.. SampleFiles.Text("1;H1;;furnace;K"), 0xFC, 0x0A], "importFile.coding");

    [Fact]
    public void ReadFile_OfTheOldForm_IsRefusedWhole() => Refused([0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1], "importFile.oldWorkbook");

    [Fact]
    public void ReadFile_WithAnOpenQuotationMark_IsRefusedWhole() =>
        Refused(SampleFiles.Text([.. Enumerable.Repeat("1;H1;;furnace;K;2026-03-02 07:00:00;1;3.6;1.5;0.3;;", 100).Prepend("2;\"H1;;furnace")]), "importFile.cell");

    private static void Refused(byte[] bytes, string code)
    {
        var file = Read(bytes);
        Assert.Equal(code, file.Refusal?.Code);
        Assert.Empty(file.Samples);
    }

    private static ReadFile Read(byte[] bytes, ColumnMap? map = null) =>
        ReadFile.Of(bytes, map ?? SampleFiles.Map, TimeZoneInfo.FindSystemTimeZoneById("Europe/Berlin"), Latest, TestContext.Current.CancellationToken);
}
