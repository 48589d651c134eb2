using MeltShop.Operations.Checking;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Laboratory;

/// <summary>Says that a coin is on its way to the laboratory: when it was taken is known before its result is. Answers the coin.</summary>
public sealed class SendCoin(Recorder recorder, TimeProvider time) : Operation<SendCoin.Command, long>(recorder, time)
{
    /// <param name="ObservedAt">When it was taken.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long HeatId, long? TreatedLadleId, SampleKind Kind, string CoinNumber, string? Remarks = null)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor, Role.Inspector];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Text("coinNumber", command.CoinNumber, 60);
        SampleFields.Check(command.Kind, command.TreatedLadleId, command.CoinNumber, command.Remarks, fields);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var heat = await writing.Db.Heats.FindAsync([command.HeatId], cancellation);
        if (heat is null) return Refuse("heatId", "heat.unknown");
        if (heat.State == HeatState.Cancelled) return Refuse("heatId", "state.wrong", heat.State.ToString());
        var ladle = command.TreatedLadleId is { } id ? await writing.Db.TreatedLadles.FindAsync([id], cancellation) : null;
        if (command.TreatedLadleId is not null && ladle?.HeatId != heat.Id) return Refuse("treatedLadleId", "ladle.unknown");

        var coin = new CoinOnItsWay
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = writing.Stamp.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            HeatId = heat.Id,
            TreatedLadleId = ladle?.Id,
            Kind = command.Kind,
            CoinNumber = command.CoinNumber,
            Remarks = command.Remarks,
        };
        writing.Db.Add(coin);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(coin.Id, new ChangeNotice(ChangeKind.Sample, coin.Id), new ChangeNotice(ChangeKind.Heat, heat.Id, heat.Version));
    }
}
