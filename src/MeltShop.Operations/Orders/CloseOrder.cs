using MeltShop.Operations.Checking;
using MeltShop.Records.Orders;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Orders;

/// <summary>Closes an order: no metal is melted for it any more. Answers its new version.</summary>
public sealed class CloseOrder(Recorder recorder, TimeProvider time) : Operation<CloseOrder.Command, Guid>(recorder, time)
{
    /// <param name="State">Why: done or withdrawn.</param>
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long OrderId, Guid Version, OrderState State)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles => OrderInputs.Roles;

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Choice("state", command.State);
        if (command.State == OrderState.Open) fields.Add("state", "choice.missing");
    }

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var order = await writing.Db.CastingOrders.FindAsync([command.OrderId], cancellation);
        if (order is null) return Refuse("orderId", "order.unknown");
        if (order.Version != command.Version) return Stale(writing, order, command.Version);
        if (order.State != OrderState.Open) return Refuse("", "order.closed");

        order.State = command.State;
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(order.Version, new ChangeNotice(ChangeKind.Order, order.Id, order.Version));
    }
}
