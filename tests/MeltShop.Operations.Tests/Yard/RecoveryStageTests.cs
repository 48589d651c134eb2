using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Heat;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Tests.Correcting;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;

namespace MeltShop.Operations.Tests.Yard;

/// <summary>
/// A carburiser of 98 % C of which 90 % arrive with the cold charge and 75 % late: 85 to 95 % and 75 % and less by a supplier's page on charging an induction
/// furnace (undated, read in an excerpt). On both databases.
/// </summary>
public sealed class RecoveryStageTests
{
    private static readonly Element[] Carbon = [Element.C];

    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Carburiser_WithTheChargeOrIntoTheBath_ArrivesWithTheRecoveryOfItsWay(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var material = await Material(shop, new("C", 98, null, 90, 75));
        var heat = await shop.Bath();
        var before = await Bath(shop, heat);
        shop.Clock.Advance(5);
        var late = await shop.WeighIn(heat, material.Id, 10, intoBath: true);

        // 10 kg hold 9.8 kg of carbon and 0.2 kg of iron. Late 7.35 kg of the carbon arrive, with the charge 8.82 kg; by hand.
        var after = await Bath(shop, heat);
        Assert.Equal(before.Kg + 7.55, after.Kg, 9);
        Assert.Equal(before.ElementKg(Element.C) + 7.35, after.ElementKg(Element.C), 9);

        await Shop.Do(shop.Get<CorrectWeighing>(), shop.Melter, new(Guid.NewGuid(), shop.Now, late, heat.Id, material.Id, 10, IntoBath: false, "went in with the charge"));
        var corrected = await Bath(shop, heat);
        Assert.Equal(before.Kg + 9.02, corrected.Kg, 9);
        Assert.Equal(before.ElementKg(Element.C) + 8.82, corrected.ElementKg(Element.C), 9);
        Assert.Equal(after.Kg + 1.47, await shop.InFurnace(), 9);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Carburiser_PlannedAndCorrectedWith_HasTheRecoveryOfItsStage(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var material = await Material(shop, new("C", 98, null, 90, 75));
        var facts = (await shop.Get<CorrectionForecast>().Facts((await AcceptCorrectionTests.Low(shop)).Heat.Id, Soon))!;
        var (problem, _) = CorrectionQuestion.Build(facts, new(1450));

        Assert.Equal(90, ChargeMaterials.Offered(material)!.Composition.Recovery(Element.C));
        Assert.Equal(75, problem!.Additions.Single(addition => addition.Code == "coke").Composition.Recovery(Element.C));
        Assert.Empty(material.AsWithTheCharge());

        // The other carburiser of the shop has one recovery, said for the charge.
        Assert.Equal(90, problem.Additions.Single(addition => addition.Code == "carbon").Composition.Recovery(Element.C));
        Assert.Equal(Carbon, (await shop.Get<YardPage>().Material(shop.CarburiserId, Soon))!.AsWithTheCharge());
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Carburiser_OfWhichNobodySaidARecovery_IsMarkedToo(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);

        Assert.Equal(Carbon, (await Material(shop, new("C", 98))).AsWithTheCharge());
        Assert.Empty((await shop.Get<YardPage>().Material(shop.SteelId, Soon))!.AsWithTheCharge()); // scrap brings what it is made of
    }

    // 0.6 → 1.2 % C of 5000 kg takes 30 kg of carbon: 34.0 kg of a pure carburiser at 90 % less what its 98 % lack, and a fifth more where only 75 % arrive (90/75 = 1.2).
    [Fact]
    public void Carburiser_AddedLate_TakesAFifthMoreThanInTheCharge()
    {
        var view = new MaterialPercentView(Element.C, 98, null, 90, 75);
        double Kg(RecoveryStage stage) => SimpleAddition.Kg(5000, 0.6, 1.2, view.Percent, view.RecoveryAt(stage)!.Value);

        Assert.Equal(34.0, Kg(RecoveryStage.Charge), 0.05);
        Assert.Equal(1.2, Kg(RecoveryStage.Bath) / Kg(RecoveryStage.Charge), 9);
    }

    [Theory]
    [InlineData(null, null, null, null)]
    [InlineData(90.0, null, 90.0, 90.0)]
    [InlineData(null, 75.0, null, 75.0)]
    [InlineData(90.0, 0.0, 90.0, 0.0)]
    public void Recovery_OfAStage_IsItsOwnOrThatOfTheCharge(double? charge, double? bath, double? withCharge, double? intoBath)
    {
        Assert.Equal(withCharge, RecoveryStage.Charge.Of(charge, bath));
        Assert.Equal(intoBath, RecoveryStage.Bath.Of(charge, bath));
    }

    private static async Task<MaterialView> Material(Shop shop, MaterialPercentInput percent)
    {
        var id = (await Shop.Do(shop.Get<AddMaterial>(), shop.Metallurgist, new(
            Guid.NewGuid(), shop.Now, "coke", "Coke", MaterialKind.Carburiser, MaterialUses.Charge | MaterialUses.BathAddition, 700, 100, [percent], "invented for a test", "memory"))).Value;
        await Shop.Do(shop.Get<BookStock>(), shop.Melter, new(Guid.NewGuid(), shop.Now, id, StockKind.Counted, 500));
        return (await shop.Get<YardPage>().Material(id, Soon))!;
    }

    private static async Task<Metal> Bath(Shop shop, Heat heat)
    {
        await using var db = shop.Db();
        return (await BathNow.Load(db, heat, Soon))!.Metal;
    }
}
