using MeltShop.Operations.Importing.Maps;
using MeltShop.Operations.Importing.Rows;
using MeltShop.Operations.Importing.Taking;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Tests.Importing.Corrupted;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Importing;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Importing;

/// <summary>Files come in whole or not at all, once, and the trail answers for each of their rows; on both databases.</summary>
public sealed class ImportSamplesTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Import_OfAFileWithFaults_TakesTheSoundSamplesAndKeepsWhyTheOthersDidNotCount(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (map, heat) = (await shop.ImportMap(), await shop.Bath());
        var at = shop.LocalTime();
        var bytes = SampleFiles.Text(
            $"7;{heat.Number};;second;K7;{at};1;3.61;1.52;0.30;<20;first of the shift", $"7;{heat.Number};;second;K7;{at};2;3.63;1.54;0.30;21;",
            $"8;{heat.Number};;second;K8;{at};1;3,61;1.52;0.30;;", $"9;TB-1999-0001;;second;K9;{at};1;3.61;1.52;0.30;;", $"10;{heat.Number};;last;K9;{at};1;3.61;1.52;0.30;;");

        var preview = await shop.Preview(map, bytes);
        Assert.Equal((2, 0, 3), (preview.Found.NewRows, preview.Found.KnownRows, preview.Found.RefusedRows));
        var before = await shop.Rows();
        Assert.Equal(before, await shop.Rows()); // to look is not to take in
        var result = (await shop.Import(map, bytes)).Value;

        var sample = (await shop.Get<HeatPage>().Load(heat.Id, Soon))!.Samples.Single(s => s.Id == result.FirstSampleId);
        Assert.Equal((1, 2, "K7", "first of the shift", SampleKind.AfterCorrection), (result.Samples, result.Rows, sample.CoinNumber, sample.Remarks, sample.Kind));
        Assert.Equal(["3.61", "1.52", "0.30", "<20"], sample.Burns[0].Readings.Select(r => r.InstrumentText));
        Assert.Equal([3.62, 1.53, 0.30, 0.00205], sample.Means.Select(m => Math.Round(m.Percent, 9)));
        await using var db = shop.Db();
        var file = await db.ImportedFiles.SingleAsync(Soon);
        Assert.Equal((5, 2, 0, 3, 1, bytes.Length), (file.Rows, file.NewRows, file.KnownRows, file.RefusedRows, file.Samples, file.Bytes));
        Assert.Equal([(4, "importNumber.otherSign"), (5, "heat.unknown"), (6, "sample.ladleMissing")], RefusedRows.Of(file.Refusals).Select(f => (f.Line, f.Code)));
        var origin = await db.ImportedSamples.SingleAsync(Soon);
        Assert.Equal((result.FirstSampleId, 2), (origin.SampleId, origin.Line));
        Assert.StartsWith($"7;{heat.Number};;second;K7;", origin.Text, StringComparison.Ordinal);
        Assert.Empty((await shop.Get<TrailCheck>().Run(Soon)).Faults);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Import_OfAFile_IsOneEntryOfTheTrailWithItsHashAndCounts(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (map, heat) = (await shop.ImportMap(), await shop.Bath());
        var bytes = Burns(shop, heat, 40);
        var before = (await shop.Rows())["TrailRows"];
        await shop.Import(map, bytes);

        Assert.Equal(before + 1, (await shop.Rows())["TrailRows"]);
        await using var db = shop.Db();
        var asked = (await db.TrailRows.OrderBy(r => r.Number).LastAsync(Soon)).Payload;
        var hash = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(bytes));
        Assert.Contains($"\"sha256\":\"{hash}\"", asked, StringComparison.Ordinal);
        Assert.Contains("\"rows\":120,\"newRows\":120,\"knownRows\":0,\"refusedRows\":0", asked, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Import_OfTheSameFileAgain_DoublesNothing(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (map, heat) = (await shop.ImportMap(), await shop.Bath());
        await shop.Import(map, Burns(shop, heat, 3));
        var before = await shop.Rows();

        var again = await shop.Preview(map, Burns(shop, heat, 3));
        Assert.Equal((0, 9, 0), (again.Found.NewRows, again.Found.KnownRows, again.Found.RefusedRows));
        Assert.Equal("importFile.nothing", (await shop.Import(map, Burns(shop, heat, 3))).Findings.Single().Code);
        Assert.Equal(before, await shop.Rows());

        var longer = (await shop.Import(map, Burns(shop, heat, 4))).Value; // the instrument goes on writing into the same file
        Assert.Equal((1, 3), (longer.Samples, longer.Rows));
        var changed = await shop.Preview(map, System.Text.Encoding.UTF8.GetBytes(System.Text.Encoding.UTF8.GetString(Burns(shop, heat, 4)).Replace(";3.500;", ";3.900;", StringComparison.Ordinal)));
        Assert.All(changed.Found.Faults, f => Assert.Equal("importSample.other", f.Code));
        Assert.Equal(3, changed.Found.RefusedRows);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Import_OfTwoAtOnce_TakesEachSampleOnce(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (map, heat) = (await shop.ImportMap(), await shop.Bath());
        var preview = await shop.Preview(map, Burns(shop, heat, 30));
        var outcomes = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() =>
            shop.Get<ImportSamples>().Run(shop.Metallurgist, preview.Taking(Guid.NewGuid(), shop.Now, ImportWay.Page, "burns.csv"), Soon))));

        Assert.Single(outcomes, o => o.Succeeded);
        await using var db = shop.Db();
        Assert.Equal((1, 30), (await db.ImportedFiles.CountAsync(Soon), await db.ImportedSamples.CountAsync(Soon)));
        Assert.Empty((await shop.Get<TrailCheck>().Run(Soon)).Faults);
    }

    /// <summary>The base iron is sampled at the spout, while the ladle fills: no tap of that filling is in the records yet.</summary>
    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Import_OfTheBaseIronOfALadle_FindsTheFillingWhosePocketIsLaid(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var map = await shop.ImportMap(SampleFiles.Map with { KindTexts = [.. SampleFiles.Map.KindTexts, new("spout", SampleKind.LadleBase)] });
        var heat = await shop.Bath();
        var first = await shop.Poured(heat);
        shop.Clock.Advance(10);
        var second = await shop.Prepared(await shop.Heat(heat.Id), 500);
        shop.Clock.Advance(1);

        var preview = await shop.Preview(map, SampleFiles.Text(
            $"1;{heat.Number};L1;spout;K1;{shop.LocalTime()};1;3.65;1.5;0.3;;", $"2;{heat.Number};L1;spout;K2;{shop.LocalTime(8)};1;3.65;1.5;0.3;;",
            $"3;{heat.Number};L1;last;K3;{shop.LocalTime()};1;3.6;2.4;0.3;400;"));

        Assert.Equal([second.Id, first.Id, first.Id], preview.Found.New.OrderBy(s => s.Sample.Line).Select(s => s.TreatedLadleId!.Value));
    }

    /// <summary>An instrument writes when it measured; the coin that was sent ahead says when it was taken.</summary>
    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Import_OfACoinThatWasSentAhead_KeepsWhenItWasTakenAndKnowsItAgain(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (map, heat) = (await shop.ImportMap(), await shop.Bath());
        var taken = shop.Now;
        await Shop.Do(shop.Get<SendCoin>(), shop.Melter, new(Guid.NewGuid(), taken, heat.Id, null, SampleKind.AfterCorrection, "K7"));
        shop.Clock.Advance(6);
        var row = $"7;{heat.Number};;second;K7;{shop.LocalTime()};1;3.61;1.52;0.30;;";
        var result = (await shop.Import(map, SampleFiles.Text(row))).Value;

        await using var db = shop.Db();
        Assert.Equal(taken, (await db.Samples.SingleAsync(s => s.Id == result.FirstSampleId, Soon)).ObservedAt);
        var again = await shop.Preview(map, SampleFiles.Text(row + "a note"));
        Assert.Equal((0, 1, 0), (again.Found.NewRows, again.Found.KnownRows, again.Found.RefusedRows));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Import_ByFurnaceAndLadle_FindsTheHeatThatWasThereAndMovesItOn(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var map = await shop.ImportMap(SampleFiles.Map with
        {
            Columns = [.. SampleFiles.Map.Columns.Select(c => c.Role == ColumnRole.Heat ? c with { Role = ColumnRole.Furnace } : c)],
        });
        var earlier = shop.LocalTime();
        shop.Clock.Advance(10);
        var heat = await shop.StartHeat();
        foreach (var (material, kg) in await shop.Planned(heat)) await shop.WeighIn(heat, material, kg);
        shop.Clock.Advance(60);
        await shop.Import(map, SampleFiles.Text($"1;F1;;furnace;K1;{shop.LocalTime()};1;3.65;1.5;0.3;;"));
        Assert.Equal(HeatState.Bath, (await shop.Heat(heat.Id)).State);

        await shop.Sample(heat, SampleKind.AfterCorrection, ("C", 3.65), ("Si", 1.5), ("Mn", 0.3), ("S", 0.012));
        var ladle = await shop.Poured(await shop.Heat(heat.Id));
        shop.Clock.Advance(6);
        var preview = await shop.Preview(map, SampleFiles.Text(
            $"2;F1;L1;last;K2;{shop.LocalTime()};1;3.6;2.4;0.3;400;", $"3;F1;;furnace;K3;{earlier};1;3.65;1.5;0.3;;", $"4;F9;;furnace;K4;{earlier};1;3.65;1.5;0.3;;",
            $"5;F1;L9;last;K5;{shop.LocalTime()};1;3.65;1.5;0.3;;", $"6;F1;L1;last;K6;{shop.LocalTime(30)};1;3.65;1.5;0.3;;"));
        Assert.Equal([(3, "importHeat.noneThen"), (4, "importFurnace.unknown"), (5, "ladle.unknown"), (6, "importLadle.noneThen")], preview.Found.Faults.Select(f => (f.Line, f.Code)));
        var taken = (await Shop.Do(shop.Get<ImportSamples>(), shop.Melter, preview.Taking(Guid.NewGuid(), shop.Now, ImportWay.Page, "b.csv"))).Value;

        Assert.Equal(TreatedLadleState.Held, (await shop.Treated(ladle.Id)).State);
        await using var db = shop.Db();
        var sample = await db.Samples.SingleAsync(s => s.Id == taken.FirstSampleId, Soon);
        Assert.Equal((heat.Id, ladle.Id), (sample.HeatId, sample.TreatedLadleId!.Value));
        Assert.Empty((await shop.Get<TrailCheck>().Run(Soon)).Faults);
    }

    [Fact]
    public async Task Import_AfterSomebodyElse_IsRefusedUntilItIsLookedAtAgain()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var (map, heat) = (await shop.ImportMap(), await shop.Bath());
        var preview = await shop.Preview(map, Burns(shop, heat, 2));
        await shop.Import(map, Burns(shop, heat, 1));

        await shop.Refuses(shop.Get<ImportSamples>(), shop.Metallurgist, preview.Taking(Guid.NewGuid(), shop.Now, ImportWay.Page, "b.csv"), "file", "importFile.changed");
        await shop.Refuses(shop.Get<ImportSamples>(), shop.Administrator, preview.Taking(Guid.NewGuid(), shop.Now, ImportWay.Page, "b.csv"), "", "right.missing");
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task ImportedBurn_SetAsideAndSampleCorrected_LeaveTheTrailWhole(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (map, heat) = (await shop.ImportMap(), await shop.Bath());
        var first = (await shop.Import(map, Burns(shop, heat, 2))).Value.FirstSampleId;

        await Shop.Do(shop.Get<SetBurnAside>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, first, 2, "burnt over a hole"));
        await shop.Sample(heat, SampleKind.AfterCorrection, ("C", 3.6)); // a sample entered by hand gets the next key

        Assert.Empty((await shop.Get<TrailCheck>().Run(Soon)).Faults);
    }

    private static byte[] Burns(Shop shop, Heat heat, int samples) =>
        SampleFiles.Many(samples, heat.Number, TimeZoneInfo.ConvertTime(heat.StartedAt, TimeZoneInfo.FindSystemTimeZoneById("Europe/Berlin")).DateTime.AddMinutes(1));
}
