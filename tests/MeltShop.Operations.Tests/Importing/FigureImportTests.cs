using System.Text;
using MeltShop.Operations.Importing.Maps;
using MeltShop.Operations.Tests.Importing.Corrupted;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Tests.Importing;

/// <summary>Grey coins, cups and chill wedges in files; on both databases where they are written.</summary>
public sealed class FigureImportTests
{
    private const string Headings = SampleFiles.Headings + ";Fracture;TL;TElow;TEhigh;Chill";

    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    private static ColumnMap Map { get; } = SampleFiles.Map with
    {
        GreyText = "grey",
        WhiteText = "white",
        KindTexts = [.. SampleFiles.Map.KindTexts, new("cup", SampleKind.Cup), new("wedge", SampleKind.ChillWedge)],
        Columns =
        [
            .. SampleFiles.Map.Columns, new(12, "Fracture", ColumnRole.Fracture), new(13, "TL", ColumnRole.Figure, Figure: FigureQuantity.LiquidusC),
            new(14, "TElow", ColumnRole.Figure, Figure: FigureQuantity.EutecticLowC), new(15, "TEhigh", ColumnRole.Figure, Figure: FigureQuantity.EutecticHighC),
            new(16, "Chill", ColumnRole.Figure, Figure: FigureQuantity.ChillMm),
        ],
    };

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Import_OfCoinsCupsAndWedges_BringsEachWithWhatItSaysAndDoublesNothing(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (map, heat) = (await shop.ImportMap(Map), await shop.Bath());
        var bytes = File(shop, heat.Number, "1;H;;second;K1;T;1;3.61;1.52;0.30;;;GREY;;;;", "2;H;;second;K2;T;1;3.62;1.52;0.30;;;white;;;;", "3;H;;cup;;T;1;;;;;;;1196.8;1141;1148.5;", "4;H;;wedge;W;T;1;;;;;;;;;;6.5");

        var preview = await shop.Preview(map, bytes);
        Assert.Equal((4, 0), (preview.Found.NewRows, preview.Found.RefusedRows));
        await shop.Import(map, bytes);

        var samples = (await shop.Get<HeatPage>().Load(heat.Id, Soon))!.Samples.Where(s => s.Kind != SampleKind.Bath).ToList();
        Assert.Equal([SampleKind.AfterCorrection, SampleKind.AfterCorrection, SampleKind.Cup, SampleKind.ChillWedge], samples.Select(s => s.Kind));
        Assert.Equal([true, false, false, false], samples.Select(s => s.GreyFracture));
        Assert.Equal([1, 1, 0, 0], samples.Select(s => s.Burns.Count));
        Assert.Equal(
            [new(FigureQuantity.LiquidusC, 1196.8, "1196.8"), new(FigureQuantity.EutecticLowC, 1141, "1141"), new FigureView(FigureQuantity.EutecticHighC, 1148.5, "1148.5")],
            samples[2].Figures);
        Assert.Equal([new FigureView(FigureQuantity.ChillMm, 6.5, "6.5")], samples[3].Figures);
        Assert.Empty((await shop.Get<TrailCheck>().Run(Soon)).Faults);

        var again = (await shop.Preview(map, bytes)).Found;
        Assert.Equal((0, 4, 0), (again.NewRows, again.KnownRows, again.RefusedRows));
        var other = (await shop.Preview(map, File(shop, heat.Number, "1;H;;second;K1;T;1;3.61;1.52;0.30;;;white;;;;", "3;H;;cup;;T;1;;;;;;;1196.9;1141;1148.5;"))).Found;
        Assert.Equal(["importSample.other", "importSample.other"], other.Faults.Select(f => f.Code));
    }

    [Theory]
    [InlineData("9;H;;cup;;T;1;3.61;;;;;;1196.8;;;", "C", "sample.figuresOnly")]
    [InlineData("9;H;;second;K;T;1;3.61;1.52;;;;;1196.8;;;", "TL", "sample.otherFigures")]
    [InlineData("9;H;;cup;;T;1;;;;;;;;;;6.5", "Chill", "sample.otherFigures")]
    [InlineData("9;H;;cup;;T;1;;;;;;;;;;", "", "sample.noFigures")]
    [InlineData("9;H;;cup;;T;1;;;;;;;1196.8;1150;1141;", "TEhigh", "figure.noRecalescence")]
    [InlineData("9;H;;cup;;T;1;;;;;;;1196,8;;;", "TL", "importNumber.otherSign")]
    [InlineData("9;H;;cup;;T;1;;;;;;;<1190;;;", "TL", "importNumber.unreadable")]
    [InlineData("9;H;;wedge;;T;1;;;;;;;;;;101", "Chill", "figure.outOfRange")]
    [InlineData("9;H;;second;K;T;1;3.61;1.52;;;;mottled;;;;", "Fracture", "importFracture.unknown")]
    public async Task Row_OfFiguresOrFractureThatIsWrong_IsRefusedAtItsCell(string row, string column, string code)
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var (map, heat) = (await shop.ImportMap(Map), await shop.Bath());

        var fault = (await shop.Preview(map, File(shop, heat.Number, row))).Found.Faults[0];

        Assert.Equal((2, column, code), (fault.Line, fault.Column, fault.Code));
    }

    [Fact]
    public async Task Cup_InTwoRows_IsRefused()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var (map, heat) = (await shop.ImportMap(Map), await shop.Bath());

        var found = (await shop.Preview(map, File(shop, heat.Number, "3;H;;cup;;T;1;;;;;;;1196.8;;;", "3;H;;cup;;T;2;;;;;;;1196.8;;;"))).Found;

        Assert.Equal(["importSample.twice", "importSample.twice"], found.Faults.Select(f => f.Code));
    }

    private static byte[] File(Shop shop, string heat, params string[] rows) =>
        Encoding.UTF8.GetBytes(string.Join("\r\n", rows.Select(r => r.Replace(";H;", $";{heat};", StringComparison.Ordinal).Replace(";T;", $";{shop.LocalTime()};", StringComparison.Ordinal)).Prepend(Headings)) + "\r\n");
}
