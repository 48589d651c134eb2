using MeltShop.Operations.Checking;
using MeltShop.Records.Orders;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Orders;

/// <summary>Says an open order anew. Answers its new version.</summary>
public sealed class SetOrder(Recorder recorder, TimeProvider time) : Operation<SetOrder.Command, Guid>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long OrderId, Guid Version, OrderInput Order)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles => OrderInputs.Roles;

    protected override void Check(Command command, FieldCheck fields) => fields.Check(command.Order);

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var order = await writing.Db.CastingOrders.FindAsync([command.OrderId], cancellation);
        if (order is null) return Refuse("orderId", "order.unknown");
        if (order.Version != command.Version) return Stale(writing, order, command.Version);
        if (order.State != OrderState.Open) return Refuse("", "order.closed");
        var said = command.Order;
        if (await said.Against(writing.Db, order, cancellation) is { } finding) return Written<Guid>.Refused(finding);

        (order.Number, order.Casting, order.GradeId, order.WallMm) = (said.Number, said.Casting, said.GradeId, said.WallMm);
        (order.CastingKg, order.MouldYieldPercent, order.Pieces, order.DueOn) = (said.CastingKg, said.MouldYieldPercent, said.Pieces, said.DueOn);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(order.Version, new ChangeNotice(ChangeKind.Order, order.Id, order.Version));
    }
}
