using MeltShop.Operations.Importing.Maps;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Tests.Importing.Corrupted;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Importing;

/// <summary>Checks of an instrument in the files that it writes, beside its samples or alone; on both databases.</summary>
public sealed class CheckImportTests
{
    private const string Coin = "1;H;;second;K1;T;1;3.61;1.52;0.30;;;;;;;;", FirstBurn = "2;;;;;T;1;3.38;1.90;;;;;;;;;block-1", SecondBurn = "2;;;;;T;2;3.39;1.91;;;;;;;;;block-1";

    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Import_OfCoinsAndChecks_BringsBothOnceAndTellsTheStateOfTheInstrument(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var map = await Map(shop, MixedFiles.Map);
        var heat = await shop.Bath();
        shop.Clock.Advance(10);
        var bytes = MixedFiles.Text(heat.Number, shop.LocalTime(), Coin, FirstBurn, SecondBurn);
        Assert.Equal((3, 0), await Counts(shop, map, bytes));
        var taken = (await shop.Import(map, bytes)).Value;

        Assert.Equal((2, 3), (taken.Samples, taken.Rows));
        await using var db = shop.Db();
        var check = await db.ControlSamples.Include(c => c.Readings).SingleAsync(Soon);
        Assert.Equal(["3.38", "1.90", "3.39", "1.91"], check.Readings.OrderBy(r => r.Ordinal).ThenBy(r => r.Element).Select(r => r.InstrumentText));
        Assert.Equal((4, 3), ((await db.ImportedChecks.SingleAsync(Soon)).Text.Split('\n').Length + 2, (await db.ImportedChecks.SingleAsync(Soon)).Line));
        Assert.Equal("1", (await db.ImportedSamples.SingleAsync(Soon)).Identity.Split('#')[1]);

        // Given limits: 3.30 ± 3·√(0.02² + (0.02/2)²) = 3.30 ± 0.067; the mean of the burns is 3.385.
        var page = (await shop.Get<InstrumentPage>().Load(check.InstrumentId, Soon))!;
        Assert.Equal([false], page.State.Verdicts.Select(v => v.IsGood));
        Assert.Single((await shop.Get<HeatPage>().Load(heat.Id, Soon))!.Samples, s => s.Kind == SampleKind.AfterCorrection);
        Assert.Empty((await shop.Get<TrailCheck>().Run(Soon)).Faults);

        var again = (await shop.Preview(map, bytes)).Found;
        Assert.Equal((0, 3, 0), (again.NewRows, again.KnownRows, again.RefusedRows));
    }

    [Theory]
    [InlineData("2;;;;;T;1;3.30;;;;;;;;;;block-1", "importSample.other")] // other values
    [InlineData("2;H;;second;K2;T;1;3.61;;;;;;;;;;", "importSample.other")] // the number of a check, given to a coin
    [InlineData("1;;;;;T;1;3.61;1.52;0.30;;;;;;;;block-1", "importSample.other")] // the number of a coin, given to a check
    [InlineData("3;;;;;T;1;3.30;;;;;;;;;;block-9", "reference.unknown")]
    [InlineData("3;;;;;T;1;3.30;;;;;;1196;;;;block-1", "sample.otherFigures")]
    [InlineData("3;;;;;T;1;;;;;;;;;;;block-1", "burn.empty")]
    [InlineData("3;;;;;T;1;3.30;;;;;;;;;;", "importCell.missing")] // of no heat and no reference material
    public async Task Row_OfACheckThatCannotBe_IsRefusedWithItsReason(string row, string code)
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var map = await Map(shop, MixedFiles.Map);
        var heat = await shop.Bath();
        shop.Clock.Advance(10);
        var at = shop.LocalTime();
        await shop.Import(map, MixedFiles.Text(heat.Number, at, Coin, FirstBurn, SecondBurn));

        var found = (await shop.Preview(map, MixedFiles.Text(heat.Number, at, row))).Found;

        Assert.Contains(code, found.Faults.Select(f => f.Code));
        Assert.Equal((0, 1), (found.NewRows, found.RefusedRows));
    }

    [Fact]
    public async Task Map_OfChecksAlone_NeedsNoHeatAndKnowsThemByMaterialAndInstant()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var map = await Map(shop, MixedFiles.Map with
        {
            Columns = [.. MixedFiles.Map.Columns.Where(c => c.Role is ColumnRole.TakenAt or ColumnRole.Element or ColumnRole.Reference)], KindTexts = [],
        });
        var bytes = MixedFiles.Text("", shop.LocalTime(), FirstBurn, SecondBurn.Replace("block-1", "", StringComparison.Ordinal));
        Assert.Equal((1, 1), await Counts(shop, map, bytes));
        Assert.Equal(0, (await shop.Import(map, bytes)).Value.FirstSampleId);

        Assert.Equal((0, 1), await Counts(shop, map, bytes));
        await using var db = shop.Db();
        Assert.Equal(1, await db.ControlSamples.CountAsync(Soon));
    }

    private static async Task<(int New, int Refused)> Counts(Shop shop, long map, byte[] bytes)
    {
        var found = (await shop.Preview(map, bytes)).Found;
        return (found.NewRows, found.RefusedRows);
    }

    /// <summary>A spectrometer with repeatability, a reference material, and a map of its files.</summary>
    private static async Task<long> Map(Shop shop, ColumnMap map)
    {
        await Shop.Do(shop.Get<AddInstrument>(), shop.Metallurgist, new(
            Guid.NewGuid(), shop.Now, map.Instrument, "Spark", InstrumentKind.Spark, false, [new("C", 0.02, 2)], "invented for a test"));
        await Shop.Do(shop.Get<AddReferenceMaterial>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, "block-1", "White iron block", "invented for a test", [new("C", 3.30, 0.02)]));
        return (await Shop.Do(shop.Get<SaveImportMap>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, null, null, "mixed", map))).Value;
    }
}
