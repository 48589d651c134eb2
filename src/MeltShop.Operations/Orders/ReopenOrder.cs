using MeltShop.Operations.Checking;
using MeltShop.Records.Orders;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Orders;

/// <summary>Opens a closed order again, with the castings that were counted. Answers its new version.</summary>
public sealed class ReopenOrder(Recorder recorder, TimeProvider time) : Operation<ReopenOrder.Command, Guid>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long OrderId, Guid Version) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles => OrderInputs.Roles;

    protected override void Check(Command command, FieldCheck fields)
    {
    }

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var order = await writing.Db.CastingOrders.FindAsync([command.OrderId], cancellation);
        if (order is null) return Refuse("orderId", "order.unknown");
        if (order.Version != command.Version) return Stale(writing, order, command.Version);
        if (order.State == OrderState.Open) return Refuse("", "order.open");

        order.State = OrderState.Open;
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(order.Version, new ChangeNotice(ChangeKind.Order, order.Id, order.Version));
    }
}
