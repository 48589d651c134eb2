using MeltShop.Operations.Checking;
using MeltShop.Operations.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Laboratory;

/// <summary>Says that no result will come of a coin that was sent. Answers the row that says so.</summary>
public sealed class LoseCoin(Recorder recorder, TimeProvider time) : Operation<LoseCoin.Command, long>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long CoinId, string Reason) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor, Role.Inspector];

    protected override void Check(Command command, FieldCheck fields) => fields.Text("reason", command.Reason, 500);

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var heats = await writing.Db.CoinsOnTheirWay.Where(c => c.Id == command.CoinId).Select(c => c.HeatId).ToListAsync(cancellation);
        await writing.Db.LockHeats(cancellation, heats); // or its result could come in at the same moment
        if (await SampleOrigin.Waiting(writing.Db, command.CoinId, cancellation) is not { } coin) return Refuse("coinId", "coin.notWaiting");
        var lost = new CoinOnItsWay
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = coin.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            SupersedesId = coin.Id,
            Reason = command.Reason,
            HeatId = coin.HeatId,
            TreatedLadleId = coin.TreatedLadleId,
            Kind = coin.Kind,
            CoinNumber = coin.CoinNumber,
            Remarks = coin.Remarks,
            IsLost = true,
        };
        writing.Db.Add(lost);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(lost.Id, new ChangeNotice(ChangeKind.Sample, lost.Id), new ChangeNotice(ChangeKind.Heat, coin.HeatId));
    }
}
