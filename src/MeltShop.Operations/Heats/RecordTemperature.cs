using MeltShop.Operations.Checking;
using MeltShop.Records.Heats;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Heats;

/// <summary>Records a temperature of the bath, or of a treated ladle. Answers the reading.</summary>
public sealed class RecordTemperature(Recorder recorder, TimeProvider time) : Operation<RecordTemperature.Command, long>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long HeatId, long? TreatedLadleId, double TemperatureC)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields) => fields.Temperature("temperatureC", command.TemperatureC);

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var heat = await writing.Db.Heats.FindAsync([command.HeatId], cancellation);
        if (heat is null) return Refuse("heatId", "heat.unknown");
        if (heat.State == HeatState.Cancelled) return Refuse("heatId", "state.wrong", heat.State.ToString());
        if (command.TreatedLadleId is { } id && !await writing.Db.TreatedLadles.AnyAsync(l => l.Id == id && l.HeatId == heat.Id, cancellation))
        {
            return Refuse("treatedLadleId", "ladle.unknown");
        }

        var reading = new TemperatureReading
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = writing.Stamp.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            HeatId = heat.Id,
            TreatedLadleId = command.TreatedLadleId,
            TemperatureC = command.TemperatureC,
        };
        writing.Db.Add(reading);
        await writing.Db.SaveChangesAsync(cancellation);
        ChangeNotice[] notices = [new(ChangeKind.Heat, heat.Id)];
        return Done(reading.Id, command.TreatedLadleId is { } ladle ? [.. notices, new(ChangeKind.TreatedLadle, ladle)] : notices);
    }
}
