using MeltShop.Operations.Orders;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Orders;
using MeltShop.Records.Reading.Changes;
using MeltShop.Records.Reading.Orders;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Orders;

/// <summary>Orders are taken, said anew, counted and closed, on both databases.</summary>
public sealed class OrderTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    // 85 kg at 68 % are 125 kg poured: 12 castings 1500 kg, and 7 of them 875 kg.
    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Order_TakenCountedAndSaidAnew_NeedsTheMetalOfWhatIsLeft(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var id = await Taken(shop, Bracket(shop));
        var order = await Order(shop, id);
        Assert.Equal((1500, OrderState.Open, new DateOnly(2026, 3, 9)), (Math.Round(order.LeftKg, 6), order.State, order.DueOn));

        var counted = (await Shop.Do(shop.Get<CountPieces>(), shop.Melter, new(Guid.NewGuid(), shop.Now, id, order.Version, 5))).Value;
        Assert.Equal(875, (await Order(shop, id)).LeftKg, 6);
        await Shop.Do(shop.Get<SetOrder>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, id, counted, Bracket(shop) with { Number = "4711-a", Pieces = 5, DueOn = new(2026, 4, 1) }));

        order = await Order(shop, id);
        Assert.Equal(("4711-a", 5, 5, 0, 0), (order.Number, order.Pieces, order.PiecesPoured, order.PiecesLeft, order.LeftKg));
        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Order_ThatSomebodyElseChanged_IsToldWithWhatTheyChanged(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var id = await Taken(shop, Bracket(shop));
        var seen = (await Order(shop, id)).Version;
        await Shop.Do(shop.Get<SetOrder>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, id, seen, Bracket(shop) with { DueOn = new(2026, 3, 20) }));

        var findings = await shop.Refuses(shop.Get<SetOrder>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, id, seen, Bracket(shop)), "version", "version.stale");
        await shop.Refuses(shop.Get<CountPieces>(), shop.Melter, new(Guid.NewGuid(), shop.Now, id, seen, 1), "version", "version.stale");
        await shop.Refuses(shop.Get<CloseOrder>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, id, seen, OrderState.Done), "version", "version.stale");

        var change = Assert.Single(Assert.Single(await shop.Get<ChangesSince>().Load(SeenRow.Of(findings.Single())!, Soon)).Values, v => v.Column == "DueOn");
        Assert.Equal((new DateOnly(2026, 3, 9), new DateOnly(2026, 3, 20)), (change.Before, change.After));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Order_Closed_NeedsNoMetalUntilItIsOpenedAgain(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var id = await Taken(shop, Bracket(shop));
        var closed = (await Shop.Do(shop.Get<CloseOrder>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, id, (await Order(shop, id)).Version, OrderState.Withdrawn))).Value;

        Assert.Empty((await shop.Get<OrdersPage>().Load(new(), Soon)).ToPour);
        Assert.Equal(OrderState.Withdrawn, Assert.Single((await shop.Get<OrdersPage>().Load(new(IsClosed: true), Soon)).Orders).State);
        await shop.Refuses(shop.Get<SetOrder>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, id, closed, Bracket(shop)), "", "order.closed");
        await shop.Refuses(shop.Get<CountPieces>(), shop.Melter, new(Guid.NewGuid(), shop.Now, id, closed, 1), "", "order.closed");
        await shop.Refuses(shop.Get<CloseOrder>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, id, closed, OrderState.Done), "", "order.closed");

        var open = (await Shop.Do(shop.Get<ReopenOrder>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, id, closed))).Value;
        await shop.Refuses(shop.Get<ReopenOrder>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, id, open), "", "order.open");
        Assert.Equal(1500, Assert.Single((await shop.Get<OrdersPage>().Load(new(), Soon)).ToPour).LeftKg, 6);
    }

    // 1500 kg of the bracket and 2 · 40 / 0.8 = 100 kg of the lid by the 9th, 50 kg of one lid by the 12th; ductile is due first.
    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Orders_OfSeveralGradesAndDays_AddUpToTheMetalOfEachAndKeepTheirOrder(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var lid = new OrderInput("L-2", "Lid", shop.GreyId, 12, 40, 80, 1, new(2026, 3, 12));
        await Taken(shop, lid);
        await Taken(shop, lid with { Number = "L-1", Pieces = 2, DueOn = new(2026, 3, 9) });
        await Taken(shop, Bracket(shop));
        await Taken(shop, Bracket(shop) with { Number = "4712", DueOn = new(2026, 3, 10), Pieces = 4 });

        var view = await shop.Get<OrdersPage>().Load(new(), Soon);
        Assert.Equal(["4711", "L-1", "4712", "L-2"], view.Orders.Select(o => o.Number));
        Assert.Equal(
            [(9, "EN-GJL-250", 100), (9, "EN-GJS-500-7", 1500), (10, "EN-GJS-500-7", 500), (12, "EN-GJL-250", 50)],
            view.Needed.Select(n => (n.DueOn.Day, n.GradeCode, Math.Round(n.Kg, 6))));
        Assert.Equal([("EN-GJL-250", 150, 2), ("EN-GJS-500-7", 2000, 2)], view.ByGrade.Select(n => (n.GradeCode, Math.Round(n.Kg, 6), n.Orders)));
        Assert.Equal(["4711", "L-1"], (await shop.Get<OrdersPage>().Load(new(Until: new(2026, 3, 9)), Soon)).ToPour.Select(o => o.Number));
    }

    [Theory]
    [InlineData("right", "", "right.missing")]
    [InlineData("number", "number", "text.missing")]
    [InlineData("taken", "number", "code.taken")]
    [InlineData("casting", "casting", "text.missing")]
    [InlineData("grade", "gradeId", "grade.unknown")]
    [InlineData("wall", "wallMm", "number.notPositive")]
    [InlineData("mass", "castingKg", "mass.zero")]
    [InlineData("negative", "castingKg", "mass.negative")]
    [InlineData("noYield", "mouldYieldPercent", "yield.zero")]
    [InlineData("yield", "mouldYieldPercent", "percent.over100")]
    [InlineData("pieces", "pieces", "number.notPositive")]
    [InlineData("day", "dueOn", "order.day")]
    public async Task TakeOrder_WrongInput_IsRefusedAtItsField(string what, string path, string code)
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        await Taken(shop, Bracket(shop));
        var fine = Bracket(shop) with { Number = "4712" };
        var order = what switch
        {
            "number" => fine with { Number = " " },
            "taken" => fine with { Number = "4711" },
            "casting" => fine with { Casting = "" },
            "grade" => fine with { GradeId = 4711 },
            "wall" => fine with { WallMm = 0 },
            "mass" => fine with { CastingKg = 0 },
            "negative" => fine with { CastingKg = -1 },
            "noYield" => fine with { MouldYieldPercent = 0 },
            "yield" => fine with { MouldYieldPercent = 100.5 },
            "pieces" => fine with { Pieces = 0 },
            "day" => fine with { DueOn = new(202, 3, 1) },
            _ => fine,
        };
        await shop.Refuses(shop.Get<TakeOrder>(), what == "right" ? shop.Melter : shop.Supervisor, new(Guid.NewGuid(), shop.Now, order), path, code);
    }

    [Fact]
    public async Task Order_OfAGradeThatWentOutOfUse_CanBePutRightAndNotTakenAnew()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var id = await Taken(shop, Bracket(shop));
        await using (var db = shop.Db()) await db.Grades.Where(g => g.Id == shop.DuctileId).ExecuteUpdateAsync(g => g.SetProperty(x => x.IsActive, false), Soon);

        Assert.True((await Shop.Do(shop.Get<SetOrder>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, id, (await Order(shop, id)).Version, Bracket(shop) with { Pieces = 3 }))).Succeeded);
        await shop.Refuses(shop.Get<TakeOrder>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, Bracket(shop) with { Number = "4712" }), "gradeId", "grade.unknown");
        Assert.Contains(shop.DuctileId, (await shop.Get<OrdersPage>().Order(id, Soon))!.Grades.Select(g => g.Id));
    }

    [Fact]
    public async Task Order_Changed_RefusesACountBelowNoneAndAnEndThatIsNone()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var id = await Taken(shop, Bracket(shop));
        var version = (await Order(shop, id)).Version;

        await shop.Refuses(shop.Get<CountPieces>(), shop.Melter, new(Guid.NewGuid(), shop.Now, id, version, -1), "piecesPoured", "number.negative");
        await shop.Refuses(shop.Get<CloseOrder>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, id, version, OrderState.Open), "state", "choice.missing");
        await shop.Refuses(shop.Get<CloseOrder>(), shop.Melter, new(Guid.NewGuid(), shop.Now, id, version, OrderState.Done), "", "right.missing");
        await shop.Refuses(shop.Get<ReopenOrder>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, 4711, version), "orderId", "order.unknown");
    }

    private static OrderInput Bracket(Shop shop) => new("4711", "Bracket", shop.DuctileId, 22, 85, 68, 12, new(2026, 3, 9));

    private static async Task<long> Taken(Shop shop, OrderInput order) =>
        (await Shop.Do(shop.Get<TakeOrder>(), shop.Supervisor, new(Guid.NewGuid(), shop.Now, order))).Value;

    private static async Task<OrderView> Order(Shop shop, long id) => (await shop.Get<OrdersPage>().Order(id, Soon))!.Order;
}
