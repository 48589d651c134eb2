using MeltShop.Operations.Importing.Maps;
using MeltShop.Operations.Tests.Importing.Corrupted;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records.Reading.Importing;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Tests.Importing;

public sealed class MapTests(OneShop one) : IClassFixture<OneShop>
{
    private readonly Shop shop = one.Shop;

    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    public static TheoryData<string, string, string> Refused => new()
    {
        { "instrument", "instrument", "text.missing" },
        { "form", "timeForm", "importMap.timeForm" },
        { "comma", "separator", "importMap.commaTwice" },
        { "letter", "separator", "importMap.separator" },
        { "heading", "headingLine", "importMap.headingLine" },
        { "noHeat", "columns", "importMap.noHeat" },
        { "noTime", "columns", "importMap.noTime" },
        { "noNumber", "columns", "importMap.noNumber" },
        { "noKind", "usualKind", "importMap.noKind" },
        { "noElement", "columns", "importMap.noElement" },
        { "element", "columns[7]", "element.unknown" },
        { "iron", "columns[7]", "analysis.iron" },
        { "elementTwice", "columns[8]", "element.twice" },
        { "roleTwice", "columns[2]", "importMap.roleTwice" },
        { "placeTwice", "columns[7]", "importMap.placeTwice" },
        { "place", "columns[300]", "importMap.place" },
        { "figures", "usualKind", "importMap.figures" },
        { "figureTwice", "columns[11]", "figure.twice" },
        { "noGrey", "greyText", "text.missing" },
        { "sameFracture", "whiteText", "importMap.fractureTwice" },
        { "kindTwice", "kindTexts", "importMap.kindTwice" },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public async Task SaveImportMap_WrongInput_IsRefusedAtItsField(string what, string path, string code) => await shop.Refuses(
        shop.Get<SaveImportMap>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, null, null, "burns", Wrong(what)), path, code);

    [Fact]
    public async Task SaveImportMap_AnewAndAgain_KeepsWhatWasSaidLast()
    {
        var id = await shop.ImportMap();
        var kept = (await shop.Get<ImportPage>().Load(Soon)).Maps.Single(m => m.Id == id);
        Assert.Equal(RecordsJson.Text(SampleFiles.Map), RecordsJson.Text(RecordsJson.Value<ColumnMap>(kept.Definition)));

        await Shop.Do(shop.Get<SaveImportMap>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, id, kept.Version, "burns", SampleFiles.CommaMap));
        var after = (await shop.Get<ImportPage>().Load(Soon)).Maps.Single(m => m.Id == id);
        Assert.Equal(DecimalSign.Comma, RecordsJson.Value<ColumnMap>(after.Definition)!.DecimalSign);
        await shop.Refuses(shop.Get<SaveImportMap>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, id, kept.Version, "burns", SampleFiles.Map), "version", "version.stale");
        await shop.Refuses(shop.Get<SaveImportMap>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, null, null, "burns", SampleFiles.Map), "name", "code.taken");
        await shop.Refuses(shop.Get<SaveImportMap>(), shop.Melter, new(Guid.NewGuid(), shop.Now, null, null, "other", SampleFiles.Map), "", "right.missing");
        await shop.Refuses(
            shop.Get<SaveImportMap>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, null, null, "other", SampleFiles.Map with { Instrument = "none" }), "instrument", "instrument.unknown");

        await Shop.Do(shop.Get<SaveImportMap>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, id, after.Version, "burns", SampleFiles.Map, IsActive: false));
        Assert.Equal("importMap.unknown", (await shop.Get<Operations.Importing.ImportDesk>().Look(id, [1], Soon)).Findings.Single().Code);
    }

    private static ColumnMap Wrong(string what) => what switch
    {
        "instrument" => SampleFiles.Map with { Instrument = "" },
        "form" => SampleFiles.Map with { TimeForm = "dd.MM. HH:mm" },
        "comma" => SampleFiles.CommaMap with { Separator = ',' },
        "letter" => SampleFiles.Map with { Separator = 'x' },
        "heading" => SampleFiles.Map with { HeadingLine = -1 },
        "figures" => SampleFiles.Map with { UsualKind = Records.Laboratory.SampleKind.Cup },
        "figureTwice" => Column(10, c => new(10, c.Heading, ColumnRole.Figure, Figure: Records.Laboratory.FigureQuantity.ChillMm)) is var one
            ? one with { Columns = [.. one.Columns.Select(c => c.Place == 11 ? one.Columns[10] with { Place = 11 } : c)] } : one,
        "noGrey" => Column(11, c => c with { Role = ColumnRole.Fracture }),
        "sameFracture" => Column(11, c => c with { Role = ColumnRole.Fracture }) with { GreyText = "x", WhiteText = "X" },
        "noKind" => Columns(c => c.Role != ColumnRole.Kind),
        "noHeat" => Columns(c => c.Role != ColumnRole.Heat),
        "noTime" => Columns(c => c.Role != ColumnRole.TakenAt),
        "noNumber" => Columns(c => c.Role is not (ColumnRole.SampleNumber or ColumnRole.Coin)),
        "noElement" => Columns(c => c.Role != ColumnRole.Element),
        "element" => Column(7, c => c with { Element = "Xx" }),
        "iron" => Column(7, c => c with { Element = "Fe" }),
        "elementTwice" => Column(8, c => c with { Element = "C" }),
        "roleTwice" => Column(2, c => c with { Role = ColumnRole.Heat }),
        "placeTwice" => Column(8, c => c with { Place = 7 }),
        "place" => Column(8, c => c with { Place = 300 }),
        _ => SampleFiles.Map with { KindTexts = [.. SampleFiles.Map.KindTexts, new("FURNACE", Records.Laboratory.SampleKind.LadleBase)] },
    };

    private static ColumnMap Columns(Func<MappedColumn, bool> which) => SampleFiles.Map with { Columns = [.. SampleFiles.Map.Columns.Where(which)] };

    private static ColumnMap Column(int place, Func<MappedColumn, MappedColumn> change) =>
        SampleFiles.Map with { Columns = [.. SampleFiles.Map.Columns.Select(c => c.Place == place ? change(c) : c)] };
}
