using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Recall;

namespace MeltShop.Operations.Tests.Laboratory;

/// <summary>An instrument is checked, found outside, and what it measured since the last good check is listed; on both databases.</summary>
public sealed class ControlSampleTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task ControlSample_OutsideItsActionLimits_DoubtsTheHeatsSinceTheLastGoodOne(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (instrument, reference) = await Set(shop);
        await Checked(shop, instrument, reference, 3.30);
        shop.Clock.Advance(10);
        var heat = await shop.Bath();
        await Sampled(shop, heat, null, instrument);
        shop.Clock.Advance(10);

        // Given limits: 3.30 ± 3·√(0.02² + (0.02/2)²) = 3.30 ± 0.067.
        await Checked(shop, instrument, reference, 3.38);

        var view = (await shop.Get<InstrumentPage>().Load(instrument, Soon))!;
        Assert.Equal([true, false], view.State.Verdicts.Select(v => v.IsGood));
        Assert.Equal([Element.C], view.State.Last!.Outside);
        var doubted = Assert.Single(Assert.Single(view.Doubted).Heats);
        Assert.Equal((heat.Id, 1), (doubted.HeatId, doubted.Samples));

        shop.Clock.Advance(120);
        var later = await Sampled(shop, heat, null, instrument);
        var page = (await shop.Get<HeatPage>().Load(heat.Id, Soon))!;
        var sample = page.Samples.Single(s => s.Id == later);
        var last = page.Instruments[instrument].At(sample.Origin.ObservedAt)!;
        Assert.Equal(120, (sample.Origin.ObservedAt - last.At).TotalMinutes, 1);
        Assert.False(last.IsGood);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task ControlSample_GoodAgain_KeepsTheHeatsMeasuredBeforeItAndNoneAfter(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (instrument, reference) = await Set(shop);
        var heat = await shop.Bath();
        await Sampled(shop, heat, null, instrument);
        foreach (var carbon in new[] { 3.30, 3.38, 3.38, 3.31 })
        {
            shop.Clock.Advance(10);
            await Checked(shop, instrument, reference, carbon);
            shop.Clock.Advance(10);
            await Sampled(shop, heat, null, instrument);
        }

        var view = (await shop.Get<InstrumentPage>().Load(instrument, Soon))!;
        Assert.Equal([true, false, false, true], view.State.Verdicts.Select(v => v.IsGood));
        var doubted = Assert.Single(view.Doubted);
        Assert.Equal((view.State.Verdicts[0].At, view.State.Verdicts[3].At), (doubted.Time.Since, doubted.Time.Until));
        Assert.Equal((heat.Id, 3), (Assert.Single(doubted.Heats).HeatId, doubted.Heats[0].Samples)); // of five
        Assert.False(doubted.IsMore);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task ControlSample_PutRight_CountsAsItReadsNowAndKeepsTheWrongOne(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (instrument, reference) = await Set(shop);
        var wrong = await Checked(shop, instrument, reference, 3.80);
        await shop.Refuses(shop.Get<RecordControlSample>(), shop.Melter, Check(shop, instrument, reference, 3.30) with { CorrectsId = wrong }, "reason", "text.missing");

        var right = Check(shop, instrument, reference, 3.30) with { CorrectsId = wrong, Reason = "typed 8 for 3" };
        await Shop.Do(shop.Get<RecordControlSample>(), shop.Melter, right);

        var view = (await shop.Get<InstrumentPage>().Load(instrument, Soon))!;
        Assert.True(Assert.Single(view.State.Verdicts).IsGood);
        await using var db = shop.Db();
        Assert.Equal(2, db.ControlSamples.Count());
        await shop.Refuses(shop.Get<RecordControlSample>(), shop.Melter, right with { EntryKey = Guid.NewGuid() }, "correctsId", "control.unknown");
        await shop.Refuses(shop.Get<RecordControlSample>(), shop.Melter, Check(shop, 99, reference, 3.3), "instrumentId", "instrument.unknown");
        await shop.Refuses(shop.Get<RecordControlSample>(), shop.Melter, Check(shop, instrument, 99, 3.3), "referenceMaterialId", "reference.unknown");
        await shop.Refuses(shop.Get<RecordControlSample>(), shop.Melter, Check(shop, instrument, reference, -1), "burns[0].C", "percent.negative");
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task ControlSample_PutRight_MayMoveInTimeAndOfARetiredInstrumentToo(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (instrument, reference) = await Set(shop);
        var wrong = await Checked(shop, instrument, reference, 3.30);
        shop.Clock.Advance(60);
        await using (var db = shop.Db())
        {
            var version = (await db.Instruments.FindAsync([instrument], Soon))!.Version;
            await Shop.Do(shop.Get<SetInstrument>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, instrument, version, "Spark", false, [new("C", 0.02, 2)], "invented for a test"));
        }

        var right = Check(shop, instrument, reference, 3.30) with { CorrectsId = wrong, Reason = "an hour earlier" };
        await shop.Refuses(shop.Get<RecordControlSample>(), shop.Melter, Check(shop, instrument, reference, 3.30), "instrumentId", "instrument.unknown");
        await shop.Refuses(shop.Get<RecordControlSample>(), shop.Melter, right, "", "correction.nothing");
        await shop.Refuses(shop.Get<RecordControlSample>(), shop.Melter, right with { HappenedAt = shop.Now.AddMinutes(1) }, "happenedAt", "time.future");
        var at = shop.Now.AddMinutes(-120);
        await Shop.Do(shop.Get<RecordControlSample>(), shop.Melter, right with { HappenedAt = at });

        Assert.Equal(at, Assert.Single((await shop.Get<InstrumentPage>().Load(instrument, Soon))!.Samples).Origin.ObservedAt);
    }

    [Theory]
    [InlineData("right", "", "right.missing")]
    [InlineData("code", "code", "text.missing")]
    [InlineData("certificate", "certificate", "text.missing")]
    [InlineData("none", "values", "reference.noValues")]
    [InlineData("unknown", "values.Xx", "element.unknown")]
    [InlineData("negative", "values.C.plusMinus", "number.negative")]
    [InlineData("taken", "code", "code.taken")]
    public async Task ReferenceMaterial_WrongInput_IsRefusedAtItsField(string what, string path, string code)
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var fine = Block(shop);
        if (what == "taken") await Shop.Do(shop.Get<AddReferenceMaterial>(), shop.Metallurgist, fine);
        var command = what switch
        {
            "code" => fine with { Code = "" },
            "certificate" => fine with { Certificate = " " },
            "none" => fine with { Values = [] },
            "unknown" => fine with { Values = [new("Xx", 1)] },
            "negative" => fine with { Values = [new("C", 3.3, -0.1)] },
            _ => fine with { EntryKey = Guid.NewGuid() },
        };
        await shop.Refuses(shop.Get<AddReferenceMaterial>(), what == "right" ? shop.Melter : shop.Metallurgist, command, path, code);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Recall_OfAnInstrument_NamesTheCastingsOfWhatItMeasured(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (instrument, _) = await Set(shop);
        var heat = await shop.Bath();
        var ladle = await shop.Poured(heat);
        await shop.Mould(ladle, "7", 400);
        Assert.Empty((await Recall(shop, new(RecallFrom.Instrument, "SPARK-1"))).Rows);
        await Sampled(shop, heat, null, instrument);

        var row = Assert.Single((await Recall(shop, new(RecallFrom.Instrument, "spark-1"))).Rows);
        Assert.Equal(ladle.Id, row.Ladle.Id);
        Assert.Empty((await Recall(shop, new(RecallFrom.Instrument, "spark-1", Since: shop.Now))).Rows);
        Assert.False((await Recall(shop, new(RecallFrom.Instrument, "spark-9"))).IsFound);
    }

    private static Task<RecallView> Recall(Shop shop, RecallQuestion question) => shop.Get<RecallPage>().Load(question, Soon);

    private static async Task<(long Instrument, long Reference)> Set(Shop shop) => (
        (await Shop.Do(shop.Get<AddInstrument>(), shop.Metallurgist, new(
            Guid.NewGuid(), shop.Now, "spark-1", "Spark", InstrumentKind.Spark, false, [new("C", 0.02, 2)], "invented for a test"))).Value,
        (await Shop.Do(shop.Get<AddReferenceMaterial>(), shop.Metallurgist, Block(shop))).Value);

    private static AddReferenceMaterial.Command Block(Shop shop) =>
        new(Guid.NewGuid(), shop.Now, "block-1", "White iron block", "invented for a test", [new("C", 3.30, 0.02)]);

    private static async Task<long> Checked(Shop shop, long instrument, long reference, double carbon) =>
        (await Shop.Do(shop.Get<RecordControlSample>(), shop.Melter, Check(shop, instrument, reference, carbon))).Value;

    private static RecordControlSample.Command Check(Shop shop, long instrument, long reference, double carbon) =>
        new(Guid.NewGuid(), shop.Now, instrument, reference, [Shop.Burn(("C", carbon))]);

    private static async Task<long> Sampled(Shop shop, Heat heat, TreatedLadle? ladle, long instrument) =>
        (await Shop.Do(shop.Get<RecordSample>(), shop.Melter, new(
            Guid.NewGuid(), shop.Now, heat.Id, ladle?.Id, SampleKind.Bath, [Shop.Burn(("C", 3.6), ("Si", 1.5))], InstrumentId: instrument))).Value;
}
