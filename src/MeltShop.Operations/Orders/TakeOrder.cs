using MeltShop.Operations.Checking;
using MeltShop.Records.Orders;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Orders;

/// <summary>Takes an order for castings. Answers it.</summary>
public sealed class TakeOrder(Recorder recorder, TimeProvider time) : Operation<TakeOrder.Command, long>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, OrderInput Order) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles => OrderInputs.Roles;

    protected override void Check(Command command, FieldCheck fields) => fields.Check(command.Order);

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var said = command.Order;
        if (await said.Against(writing.Db, null, cancellation) is { } finding) return Written<long>.Refused(finding);

        var order = new CastingOrder
        {
            Number = said.Number,
            Casting = said.Casting,
            GradeId = said.GradeId,
            WallMm = said.WallMm,
            CastingKg = said.CastingKg,
            MouldYieldPercent = said.MouldYieldPercent,
            Pieces = said.Pieces,
            DueOn = said.DueOn,
        };
        writing.Db.Add(order);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(order.Id, new ChangeNotice(ChangeKind.Order, order.Id, order.Version));
    }
}
