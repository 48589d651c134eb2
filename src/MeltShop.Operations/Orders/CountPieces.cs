using MeltShop.Operations.Checking;
using MeltShop.Records.Orders;
using MeltShop.Records.People;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Orders;

/// <summary>Says how many castings of an open order are poured so far: all of them, so that a count that comes twice adds nothing. Answers its new version.</summary>
public sealed class CountPieces(Recorder recorder, TimeProvider time) : Operation<CountPieces.Command, Guid>(recorder, time)
{
    /// <param name="PiecesPoured">0 or more; more than ordered where spares were poured.</param>
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long OrderId, Guid Version, int PiecesPoured)
        : Operations.Command(EntryKey, ObservedAt);

    /// <summary>Who pours can count.</summary>
    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, .. OrderInputs.Roles];

    protected override void Check(Command command, FieldCheck fields) => fields.NotNegative("piecesPoured", command.PiecesPoured);

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var order = await writing.Db.CastingOrders.FindAsync([command.OrderId], cancellation);
        if (order is null) return Refuse("orderId", "order.unknown");
        if (order.Version != command.Version) return Stale(writing, order, command.Version);
        if (order.State != OrderState.Open) return Refuse("", "order.closed");

        order.PiecesPoured = command.PiecesPoured;
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(order.Version, new ChangeNotice(ChangeKind.Order, order.Id, order.Version));
    }
}
