using MeltShop.Operations.Orders;
using MeltShop.Records.Orders;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Orders;

namespace MeltShop.Web.Demo;

/// <summary>
/// Orders of the demo, invented: some due soon, one late, one closed. Besides the ductile grade of the demo heat they ask for grades that its iron
/// could become when it misses.
/// </summary>
internal static class DemoOrders
{
    /// <param name="DueIn">Days from the start of the demo; negative: it is late.</param>
    private sealed record Ordered(string Number, string Casting, string Grade, double WallMm, double CastingKg, double YieldPercent, int Pieces, int DueIn, int Poured = 0, bool IsDone = false);

    private static readonly Ordered[] All =
    [
        new("1036", "Pump cover", "EN-GJS-400-15", 14, 18.5, 58, 40, -6, Poured: 40, IsDone: true),
        new("1039", "Counterweight", "EN-GJL-200", 24, 240, 78, 6, -2, Poured: 4),
        new("1041", "Bearing housing", "EN-GJS-500-7", 20, 38, 62, 60, 1, Poured: 18),
        new("1042", "Wheel hub", "EN-GJS-600-3", 22, 64, 66, 30, 2),
        new("1043", "Spring bracket", "EN-GJS-400-15", 16, 12.5, 55, 200, 3),
        new("1044", "Gear case", "EN-GJL-250", 18, 85, 68, 24, 4),
        new("1045", "Bearing housing, long", "EN-GJS-500-7", 20, 52, 62, 25, 8),
    ];

    public static async Task Take(DemoHands hands, IReadOnlyDictionary<string, long> grades, CancellationToken cancellation)
    {
        var today = DateOnly.FromDateTime(hands.Now.UtcDateTime);
        foreach (var order in All)
        {
            cancellation.ThrowIfCancellationRequested();
            var id = await hands.Do(hands.The<TakeOrder>(), Role.Supervisor, new(DemoKey.Of($"order/{order.Number}"), hands.Now, new(
                order.Number, order.Casting, grades[order.Grade], order.WallMm, order.CastingKg, order.YieldPercent, order.Pieces, today.AddDays(order.DueIn))));
            if (order.Poured == 0) continue;
            var version = (await hands.The<OrdersPage>().Order(id, cancellation))!.Order.Version;
            version = await hands.Do(hands.The<CountPieces>(), Role.Melter, new(DemoKey.Of($"order/{order.Number}/count"), hands.Now, id, version, order.Poured));
            if (order.IsDone) await hands.Do(hands.The<CloseOrder>(), Role.Supervisor, new(DemoKey.Of($"order/{order.Number}/done"), hands.Now, id, version, OrderState.Done));
        }
    }
}
