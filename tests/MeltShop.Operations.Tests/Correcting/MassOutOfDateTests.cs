using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Ladles;

namespace MeltShop.Operations.Tests.Correcting;

/// <summary>What was made from a mass of the bath that is another one since is out of date.</summary>
public sealed class MassOutOfDateTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Correction_WhosePigOutOrPourBackWasCorrectedSince_SaysSo(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (heat, sample) = await AcceptCorrectionTests.Low(shop);
        await Shop.Do(shop.Get<PigOut>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, 100, "too full"));
        await Shop.Do(shop.Get<PourBack>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, null, 50, new Dictionary<string, double> { ["C"] = 3.4, ["Si"] = 1.3, ["Mn"] = 0.3 }, "left over"));
        await Accept(shop, heat, sample);
        Assert.Empty(await Notes(shop, heat));

        await Correct(shop, heat, FurnaceMetalKind.Pigged, 120, "read again");
        await Correct(shop, heat, FurnaceMetalKind.PouredBack, 60, "weighed again");

        Assert.Equal(["Metal read again", "Metal weighed again"], await Notes(shop, heat));
    }

    /// <summary>A dip said the level, whatever was pigged out before it; what is mixed into the bath after its sample makes another iron of it all the same.</summary>
    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Correction_MadeAfterADip_IsOutOfDateByTheDipAndByWhatWasMixed(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (heat, sample) = await AcceptCorrectionTests.Low(shop);
        await Shop.Do(shop.Get<PigOut>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, 100, "too full"));
        await Shop.Do(shop.Get<PourBack>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, null, 50, new Dictionary<string, double> { ["C"] = 3.4, ["Si"] = 1.3, ["Mn"] = 0.3 }, "left over"));
        await Shop.Do(shop.Get<DipFurnace>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.FurnaceId, 1500, null, "dipped with a bar"));
        await Accept(shop, heat, sample);

        // The dip's line is written anew for each of these, and says the same level; so it does with another word on how good it is.
        await Shop.Do(shop.Get<WeighIn>(), shop.Melter, new(Guid.NewGuid(), shop.Now.AddMinutes(-30), heat.Id, shop.SteelId, 20, null));
        await Correct(shop, heat, FurnaceMetalKind.Pigged, 120, "read again");
        await Correct(shop, heat, FurnaceMetalKind.Dipped, 1500, "known to 20 kg", plusMinusKg: 20);
        Assert.Empty(await Notes(shop, heat));

        await Correct(shop, heat, FurnaceMetalKind.PouredBack, 60, "weighed again");
        await Correct(shop, heat, FurnaceMetalKind.Dipped, 1600, "bar was short");
        Assert.Equal(["Metal weighed again", "Metal bar was short"], await Notes(shop, heat));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Correction_MadeAfterTheLineWasCorrected_IsNotOutOfDateByThat(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (heat, sample) = await AcceptCorrectionTests.Low(shop);
        await Shop.Do(shop.Get<DipFurnace>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.FurnaceId, 1500, null, "dipped with a bar"));
        await Correct(shop, heat, FurnaceMetalKind.Dipped, 1600, "bar was short");
        await Accept(shop, heat, sample);

        Assert.Empty(await Notes(shop, heat));
    }

    /// <summary>A card uses the bath's analysis, and that is another one by the mass only where something was mixed in after the sample.</summary>
    [Theory]
    [InlineData(RecordsProvider.Sqlite, true)]
    [InlineData(RecordsProvider.Postgres, true)]
    [InlineData(RecordsProvider.Sqlite, false)]
    public async Task PocketCard_MadeWithoutAChargeThatCameLate_SaysSoWhereSomethingWasMixedInAfterTheSample(RecordsProvider provider, bool isMixed)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.Bath();
        shop.Clock.Advance(5);
        if (isMixed) await shop.WeighIn(heat, shop.CarburiserId, 2, intoBath: true);
        var ladle = await shop.Prepared(heat, 700);
        shop.Clock.Advance(5);

        await Shop.Do(shop.Get<WeighIn>(), shop.Melter, new(Guid.NewGuid(), shop.Now.AddMinutes(-40), heat.Id, shop.SteelId, 300, null));

        var kinds = isMixed ? [StaleKind.MissedWeighing] : Array.Empty<StaleKind>();
        Assert.Equal(kinds, (await shop.Get<HeatPage>().Load(heat.Id, Soon))!.Ladles.Single().Card!.Stale.Select(note => note.Kind));
        Assert.Equal(kinds, (await shop.Get<LadlePage>().Load(ladle.Id, Soon))!.Treated!.Card!.Stale.Select(note => note.Kind));
    }

    private static async Task Accept(Shop shop, Heat heat, long sample)
    {
        shop.Clock.Advance(5);
        Assert.Empty((await Shop.Do(shop.Get<AcceptCorrection>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, sample, new(1450), await AcceptCorrectionTests.Seen(shop, heat)))).Findings);
        shop.Clock.Advance(5);
    }

    private static async Task Correct(Shop shop, Heat heat, FurnaceMetalKind kind, double kg, string reason, double? plusMinusKg = null)
    {
        var line = (await shop.Get<HeatPage>().Load(heat.Id, Soon))!.Metal.Single(metal => metal.Kind == kind && !metal.Origin.IsCorrected).Origin.FactId;
        Assert.Empty((await Shop.Do(shop.Get<CorrectMetal>(), shop.Melter, new(Guid.NewGuid(), shop.Now, line, kg, plusMinusKg, reason))).Findings);
        shop.Clock.Advance(5);
    }

    private static async Task<IEnumerable<string>> Notes(Shop shop, Heat heat) =>
        (await shop.Get<HeatPage>().Load(heat.Id, Soon))!.Corrections.Single().Stale.OrderBy(note => note.At).Select(note => $"{note.Kind} {note.Reason}");
}
