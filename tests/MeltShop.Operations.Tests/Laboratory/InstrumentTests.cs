using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Laboratory;

namespace MeltShop.Operations.Tests.Laboratory;

/// <summary>An instrument is set up by the metallurgist, and so is its guard band, on both databases.</summary>
public sealed class InstrumentTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Instrument_SetUpAndSetAnew_MeasuresWhatWasSaidLast(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var id = (await Shop.Do(shop.Get<AddInstrument>(), shop.Metallurgist, Spark(shop))).Value;
        var before = (await shop.Get<InstrumentsPage>().Load(Soon)).Single(i => i.Id == id);

        await Shop.Do(shop.Get<SetInstrument>(), shop.Metallurgist, new(
            Guid.NewGuid(), shop.Now, id, before.Version, "Spark, hall 2", true, [new("Mg", 0.0012, 3), new("C", 0.02, 2)], "twenty burns on one coin"));

        var after = (await shop.Get<InstrumentsPage>().Load(Soon)).Single(i => i.Id == id);
        Assert.Equal([(Element.C, 0.02, 2), (Element.Mg, 0.0012, 3)], after.Elements.Select(e => (e.Element, e.Repeatability!.Value, e.GuardFactor!.Value)));
        Assert.Equal(("Spark, hall 2", "twenty burns on one coin", InstrumentKind.Spark), (after.Name, after.FiguresSource, after.Kind));
        await shop.Refuses(
            shop.Get<SetInstrument>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, id, before.Version, "late", true, [], null), "version", "version.stale");
        await shop.Refuses(shop.Get<AddInstrument>(), shop.Metallurgist, Spark(shop), "code", "code.taken");
    }

    [Theory]
    [InlineData("right", "", "right.missing")]
    [InlineData("code", "code", "text.missing")]
    [InlineData("unknown", "elements.Xx", "element.unknown")]
    [InlineData("iron", "elements.Fe", "element.unknown")]
    [InlineData("twice", "elements.C", "element.twice")]
    [InlineData("zero", "elements.C.repeatability", "number.notPositive")]
    [InlineData("notANumber", "elements.C.repeatability", "number.notANumber")]
    [InlineData("negative", "elements.C.guardFactor", "number.negative")]
    [InlineData("wide", "elements.C.guardFactor", "number.tooLarge")]
    [InlineData("ofNothing", "elements.C.repeatability", "instrument.guardOfNothing")]
    [InlineData("noSource", "figuresSource", "text.missing")]
    public async Task AddInstrument_WrongInput_IsRefusedAtItsField(string what, string path, string code)
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var fine = Spark(shop);
        var command = what switch
        {
            "code" => fine with { Code = " " },
            "unknown" => fine with { Elements = [new("Xx")] },
            "iron" => fine with { Elements = [new("Fe")] },
            "twice" => fine with { Elements = [new("C"), new("C")] },
            "zero" => fine with { Elements = [new("C", 0)] },
            "notANumber" => fine with { Elements = [new("C", double.NaN)] },
            "negative" => fine with { Elements = [new("C", 0.02, -1)] },
            "wide" => fine with { Elements = [new("C", 0.02, 11)] },
            "ofNothing" => fine with { Elements = [new("C", null, 2)] },
            "noSource" => fine with { FiguresSource = null },
            _ => fine,
        };
        await shop.Refuses(shop.Get<AddInstrument>(), what == "right" ? shop.Melter : shop.Metallurgist, command, path, code);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task RecordSample_WithAnInstrument_NamesIt(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        var id = (await Shop.Do(shop.Get<AddInstrument>(), shop.Metallurgist, Spark(shop) with { SendsMeanOnly = true })).Value;
        var mean = new RecordSample.Command(
            Guid.NewGuid(), shop.Now, heat.Id, null, SampleKind.AfterCorrection, [Shop.Burn(("C", 3.6))], InstrumentId: id, IsMeanOnly: true);

        var sampleId = (await Shop.Do(shop.Get<RecordSample>(), shop.Melter, mean)).Value;

        await using var db = shop.Db();
        var sample = await db.Samples.FindAsync([sampleId], Soon);
        Assert.Equal((id, true, false), (sample!.InstrumentId, sample.IsMeanOnly, sample.GreyFracture));
        await shop.Refuses(shop.Get<RecordSample>(), shop.Melter, mean with { EntryKey = Guid.NewGuid(), InstrumentId = 99 }, "instrumentId", "instrument.unknown");
        await shop.Refuses(
            shop.Get<RecordSample>(), shop.Melter, mean with { EntryKey = Guid.NewGuid(), Burns = [Shop.Burn(("C", 3.6)), Shop.Burn(("C", 3.6))] }, "burns", "sample.meanIsOne");
    }

    private static AddInstrument.Command Spark(Shop shop) => new(
        Guid.NewGuid(), shop.Now, "spark-1", "Spark spectrometer", InstrumentKind.Spark, false, [new("C", 0.02, 2), new("Si", 0.03), new("Cu")], "invented for a test");
}
