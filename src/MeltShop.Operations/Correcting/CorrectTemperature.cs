using MeltShop.Operations.Checking;
using MeltShop.Records.Heats;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Correcting;

/// <summary>Puts a temperature right, or moves it to the heat or ladle that it belongs to. Answers the reading that stands now.</summary>
public sealed class CorrectTemperature(Recorder recorder, TimeProvider time) : Operation<CorrectTemperature.Command, long>(recorder, time)
{
    /// <param name="TemperatureId">The one that is wrong.</param>
    /// <param name="HappenedAt">When it was measured; null where that was right.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long TemperatureId, long HeatId, long? TreatedLadleId, double TemperatureC, string Reason,
        DateTimeOffset? HappenedAt = null) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Temperature("temperatureC", command.TemperatureC);
        fields.Correction(command, command.Reason, command.HappenedAt);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var wrong = await db.Temperatures.AsNoTracking().SingleOrDefaultAsync(t => t.Id == command.TemperatureId, cancellation);
        if (await db.Standing(wrong, "temperatureId", cancellation) is { } finding) return Written<long>.Refused(finding);
        var state = await db.Heats.Where(h => h.Id == command.HeatId).Select(h => (HeatState?)h.State).SingleOrDefaultAsync(cancellation);
        if (state is null) return Refuse("heatId", "heat.unknown");
        if (command.HeatId != wrong!.HeatId && state == HeatState.Cancelled) return Refuse("heatId", "state.wrong", state.Value.ToString());
        if (command.TreatedLadleId is { } id && !await db.TreatedLadles.AnyAsync(l => l.Id == id && l.HeatId == command.HeatId, cancellation))
        {
            return Refuse("treatedLadleId", "ladle.unknown");
        }

        var at = command.HappenedAt ?? wrong.ObservedAt;
        if ((wrong.HeatId, wrong.TreatedLadleId, wrong.TemperatureC, wrong.ObservedAt) == (command.HeatId, command.TreatedLadleId, command.TemperatureC, at))
        {
            return Refuse("", "correction.nothing");
        }

        var right = new TemperatureReading
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = at,
            EnteredAt = writing.Stamp.EnteredAt,
            SupersedesId = wrong.Id,
            Reason = command.Reason,
            HeatId = command.HeatId,
            TreatedLadleId = command.TreatedLadleId,
            TemperatureC = command.TemperatureC,
        };
        db.Add(right);
        await db.SaveChangesAsync(cancellation);
        long[] heats = [wrong.HeatId, right.HeatId];
        long?[] ladles = [wrong.TreatedLadleId, right.TreatedLadleId];
        return Done(right.Id,
        [
            .. heats.Distinct().Select(h => new ChangeNotice(ChangeKind.Heat, h)),
            .. ladles.OfType<long>().Distinct().Select(l => new ChangeNotice(ChangeKind.TreatedLadle, l)),
        ]);
    }
}
