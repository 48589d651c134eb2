using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Correcting;

/// <summary>Both ledgers are added up from lines that are never edited; masses by hand.</summary>
public sealed class LedgerTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Furnace_WeighingBeforeADipCorrected_StaysAtTheDippedLevel(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        var id = await shop.WeighIn(heat, shop.SteelId, 1000);
        await Shop.Do(shop.Get<DipFurnace>(), shop.Melter, new(Guid.NewGuid(), shop.Now, shop.FurnaceId, 950, null, "load cell", 15));
        await shop.WeighIn(heat, shop.SteelId, 100);

        await Shop.Do(shop.Get<CorrectWeighing>(), shop.Melter, new(Guid.NewGuid(), shop.Now, id, heat.Id, shop.SteelId, 900, false, "digits swapped"));

        Assert.Equal(950 + 97, await shop.InFurnace(), 6); // 97 % of the later 100 kg
        await using var db = shop.Db();
        Assert.Equal(4000, (await db.Materials.SingleAsync(m => m.Id == shop.SteelId, Soon)).StockKg!.Value, 6);
        Assert.Equal([950 - 970d, 950 - 873], await db.FurnaceMetals.Where(m => m.Kind == FurnaceMetalKind.Dipped).OrderBy(m => m.Id).Select(m => m.Kg).ToListAsync(Soon));
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Stock_DeliveryBeforeACountCorrected_StaysAtTheCount(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        await Book(shop, StockKind.Received, 200);
        await Book(shop, StockKind.Counted, 5150);
        await using var db = shop.Db();
        var (received, counted) = (await Last(db, shop, StockKind.Received), await Last(db, shop, StockKind.Counted));

        Assert.True((await Shop.Do(shop.Get<CorrectStock>(), shop.Melter, new(Guid.NewGuid(), shop.Now, received, 220, "delivery note"))).Succeeded);
        Assert.Equal(5150, await Stock(shop), 6);
        counted = (await db.StockFacts.AsNoTracking().SingleAsync(s => s.SupersedesId == counted, Soon)).Id;
        Assert.True((await Shop.Do(shop.Get<CorrectStock>(), shop.Melter, new(Guid.NewGuid(), shop.Now, counted, 5100, "one bay was counted twice"))).Succeeded);

        Assert.Equal(5100, await Stock(shop), 6);
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Ledgers_AfterAHundredRandomEntries_AreTheSumsOfTheirLines(RecordsProvider provider)
    {
        const int Seed = 20260302;
        TestContext.Current.TestOutputHelper!.WriteLine($"seed {Seed}");
        var random = new Random(Seed);
        await using var shop = await Shop.Open(provider);
        var heat = await shop.StartHeat();
        double steel = 5000, melted = 0;
        var weighed = new List<(long Id, double Kg)>();
        for (var i = 0; i < 100; i++)
        {
            double kg = random.Next(1, 40);
            if (weighed.Count > 0 && random.Next(3) == 0)
            {
                var n = random.Next(weighed.Count);
                if (kg == weighed[n].Kg) continue;
                (steel, melted) = (steel + weighed[n].Kg - kg, melted + (kg - weighed[n].Kg) * 0.97);
                weighed[n] = ((await shop.Get<CorrectWeighing>().Run(shop.Melter, new(
                    Guid.NewGuid(), shop.Now, weighed[n].Id, heat.Id, shop.SteelId, kg, false, "weighed again"), Soon)).Value, kg);
            }
            else
            {
                (steel, melted) = (steel - kg, melted + kg * 0.97);
                weighed.Add(((await shop.Get<WeighIn>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, shop.SteelId, kg, false), Soon)).Value, kg));
            }
        }

        Assert.Equal(melted, await shop.InFurnace(), 6);
        Assert.Equal(steel, await Stock(shop, shop.SteelId), 6);
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    private static Task<Outcome<double>> Book(Shop shop, StockKind kind, double kg) =>
        Shop.Do(shop.Get<BookStock>(), shop.Melter, new(Guid.NewGuid(), shop.Now, shop.PigIronId, kind, kg));

    private static Task<long> Last(RecordsContext db, Shop shop, StockKind kind) =>
        db.StockFacts.Where(s => s.MaterialId == shop.PigIronId && s.Kind == kind).MaxAsync(s => s.Id, Soon);

    private static async Task<double> Stock(Shop shop, long? materialId = null)
    {
        await using var db = shop.Db();
        return (await db.Materials.SingleAsync(m => m.Id == (materialId ?? shop.PigIronId), Soon)).StockKg!.Value;
    }
}
