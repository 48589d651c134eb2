using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records.Laboratory;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Laboratory;

public sealed class SampleTests(OneShop one) : IClassFixture<OneShop>
{
    private readonly Shop shop = one.Shop;

    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    public static TheoryData<string, string, string> Refused => new()
    {
        { "noBurns", "burns", "sample.noBurns" },
        { "emptyBurn", "burns[1]", "burn.empty" },
        { "negative", "burns[1].Si", "percent.negative" },
        { "notANumber", "burns[1].Si", "number.notANumber" },
        { "unknown", "burns[1].Xx", "element.unknown" },
        { "sum", "burns[1]", "analysis.sum" },
        { "noText", "burns[1].Si", "text.missing" },
        { "noLadle", "treatedLadleId", "sample.ladleMissing" },
        { "ladleOfBath", "treatedLadleId", "sample.notOfLadle" },
        { "otherLadle", "treatedLadleId", "ladle.unknown" },
        { "heat", "heatId", "heat.unknown" },
        { "future", "observedAt", "time.future" },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public Task RecordSample_WrongInput_IsRefusedAtItsField(string what, string path, string code) =>
        shop.Refuses(shop.Get<RecordSample>(), shop.Melter, Wrong(what), path, code);

    [Fact]
    public async Task SetBurnAside_WithAReason_MovesTheMeanAndNamesThePerson()
    {
        var id = await Shop.Do(shop.Get<RecordSample>(), shop.Melter, Sample(
            Shop.Burn(("C", 3.60), ("Si", 2.0)), Shop.Burn(("C", 3.62), ("Si", 2.1)), Shop.Burn(("C", 3.00), ("Si", 2.2), ("Cu", 0.3))));
        Assert.Equal((3.60 + 3.62 + 3.00) / 3, await Mean(id.Value, "C"), 9);

        await shop.Refuses(shop.Get<SetBurnAside>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, id.Value, 3, ""), "reason", "text.missing");
        await shop.Refuses(shop.Get<SetBurnAside>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, id.Value, 4, "hole"), "ordinal", "burn.unknown");
        await shop.Refuses(shop.Get<SetBurnAside>(), shop.Melter, new(Guid.NewGuid(), shop.Now, id.Value, 3, "hole"), "", "right.missing");
        var means = await Shop.Do(shop.Get<SetBurnAside>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, id.Value, 3, "burnt over a hole"));

        Assert.Equal(3.61, means.Value["C"], 9);
        Assert.DoesNotContain("Cu", means.Value.Keys); // only the burn set aside had seen copper
        await using var db = shop.Db();
        var decision = await db.BurnDecisions.SingleAsync(d => d.SampleId == id.Value, Soon);
        Assert.Equal((3, true, "burnt over a hole", shop.Metallurgist.PersonId), (decision.Ordinal, decision.SetAside, decision.Reason, decision.PersonId));
        Assert.Equal(3, await db.Burns.Where(b => b.SampleId == id.Value).SelectMany(b => b.Readings).CountAsync(r => r.Percent >= 3, Soon)); // all stay readable
        await shop.Refuses(shop.Get<SetBurnAside>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, id.Value, 3, "again"), "ordinal", "burn.aside");

        await Shop.Do(shop.Get<SetBurnAside>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, id.Value, 3, "it counts after all", SetAside: false));
        Assert.Equal((3.60 + 3.62 + 3.00) / 3, await Mean(id.Value, "C"), 9);
        Assert.Equal(0.3, await Mean(id.Value, "Cu"), 9);
    }

    [Fact]
    public async Task RecordSample_InstrumentText_IsKeptLetterByLetter()
    {
        var id = await Shop.Do(shop.Get<RecordSample>(), shop.Melter, Sample([new ReadingInput("Pb", 0.0005, true, "<0,0005")]));

        await using var db = shop.Db();
        var reading = await db.Burns.Where(b => b.SampleId == id.Value).SelectMany(b => b.Readings).SingleAsync(Soon);
        Assert.Equal((0.0005, true, "<0,0005"), (reading.Percent, reading.BelowDetection, reading.InstrumentText));
    }

    private async Task<double> Mean(long sampleId, string symbol)
    {
        await using var db = shop.Db();
        return (await db.SampleMeans.Where(m => m.SampleId == sampleId).ToListAsync(Soon)).Single(m => m.Element.Symbol == symbol).Percent;
    }

    private RecordSample.Command Sample(params IReadOnlyList<ReadingInput>[] burns) =>
        new(Guid.NewGuid(), shop.Now, one.Bath.Id, null, SampleKind.AfterCorrection, burns);

    private RecordSample.Command Wrong(string what)
    {
        var fine = Shop.Burn(("C", 3.5), ("Si", 1.5));
        var command = Sample(fine, fine);
        RecordSample.Command Second(params ReadingInput[] burn) => command with { Burns = [fine, burn] };
        return what switch
        {
            "noBurns" => command with { Burns = [] },
            "emptyBurn" => Second(),
            "negative" => Second(new ReadingInput("Si", -0.1, false, "-0.1")),
            "notANumber" => Second(new ReadingInput("Si", double.NaN, false, "?")),
            "unknown" => Second(new ReadingInput("Xx", 1, false, "1")),
            "sum" => Second(new("C", 60, false, "60"), new("Si", 60, false, "60")),
            "noText" => Second(new ReadingInput("Si", 1.5, false, " ")),
            "noLadle" => command with { Kind = SampleKind.LastMetal },
            "ladleOfBath" => command with { TreatedLadleId = 1 },
            "otherLadle" => command with { Kind = SampleKind.LastMetal, TreatedLadleId = 99 },
            "heat" => command with { HeatId = 99 },
            _ => command with { ObservedAt = shop.Now.AddMinutes(6) },
        };
    }
}
