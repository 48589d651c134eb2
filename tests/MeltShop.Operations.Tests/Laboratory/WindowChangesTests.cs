using MeltShop.Operations.Grades;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;

namespace MeltShop.Operations.Tests.Laboratory;

/// <summary>The windows of a grade as they held at some time, read from the trail.</summary>
public sealed class WindowChangesTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Window_ChangedTwiceAndOneAdded_IsThatOfItsTime(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var first = shop.Clock.GetUtcNow();
        var before = (await Grade()).At(WindowStage.Furnace).Single(window => window.Quantity == "Si");
        shop.Clock.Advance(10);
        await Change("Si", 1.71, 1.91);
        shop.Clock.Advance(10);
        var second = shop.Clock.GetUtcNow();
        shop.Clock.Advance(10);
        await Change("Si", 1.72, 1.92);
        await Change("traceFactor", null, 0.8, shop.DuctileId, WindowStage.Poured);
        await Change("Cr", null, 0.07);

        await using var db = shop.Db();
        var changes = await WindowChanges.Since(db, first, Soon);
        var grade = await Grade();

        Assert.Equal(before, Silicon(first));
        Assert.Equal((1.71, 1.91), (Silicon(second).Least, Silicon(second).Most));
        Assert.Equal((1.72, 1.92), (Silicon(shop.Clock.GetUtcNow()).Least, Silicon(shop.Clock.GetUtcNow()).Most));
        Assert.DoesNotContain(grade.At(WindowStage.Furnace, second, changes), window => window.Quantity == "Cr");
        Assert.Contains(grade.At(WindowStage.Furnace, shop.Clock.GetUtcNow(), changes), window => window.Quantity == "Cr");
        Assert.Equal(3, (await WindowChanges.Since(db, second, Soon)).Count);

        WindowView Silicon(DateTimeOffset at) => grade.At(WindowStage.Furnace, at, changes).Single(window => window.Quantity == "Si");

        async Task<GradeView> Grade(long? id = null) => (await shop.Get<GradesPage>().Grade(id ?? shop.GreyId, Soon))!;

        async Task Change(string quantity, double? least, double? most, long? id = null, WindowStage stage = WindowStage.Furnace) => await Shop.Do(shop.Get<ChangeWindow>(), shop.Metallurgist, new(
            Guid.NewGuid(), shop.Now, id ?? shop.GreyId, (await Grade(id)).Version, stage, quantity, least, null, most, 0.01));
    }
}
