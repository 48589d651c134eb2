using MeltShop.Operations.Checking;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Correcting;

/// <summary>
/// Puts a dip, a mass pigged out or a mass poured back right. What was charged or tapped is corrected at its weighing or tap. Answers
/// the line that stands now.
/// </summary>
public sealed class CorrectMetal(Recorder recorder, TimeProvider time) : Operation<CorrectMetal.Command, long>(recorder, time)
{
    /// <param name="LineId">The line that is wrong.</param>
    /// <param name="Kg">The level of a dip, or the mass pigged out or poured back, kg; 0 where there was none.</param>
    /// <param name="PlusMinusKg">For a dip: how far it may be off either way; null where nobody can say.</param>
    /// <param name="HappenedAt">When it happened; null where that was right.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long LineId, double Kg, double? PlusMinusKg, string Reason, DateTimeOffset? HappenedAt = null)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.MassOrZero("kg", command.Kg);
        if (command.PlusMinusKg is { } plusMinus) fields.MassOrZero("plusMinusKg", plusMinus);
        fields.Correction(command, command.Reason, command.HappenedAt);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var wrong = await db.FurnaceMetals.AsNoTracking().Include(m => m.Percents).SingleOrDefaultAsync(m => m.Id == command.LineId, cancellation);
        if (await db.Standing(wrong, "lineId", cancellation) is { } finding) return Written<long>.Refused(finding);
        if (wrong!.Kind is FurnaceMetalKind.Charged or FurnaceMetalKind.Tapped) return Refuse("lineId", "correction.elsewhere");
        var capacity = await db.Furnaces.Where(f => f.Id == wrong.FurnaceId).Select(f => f.CapacityKg).SingleAsync(cancellation);
        if (command.Kg > capacity) return Refuse("kg", "furnace.capacity", capacity);

        await db.LockFurnaces(cancellation, wrong.FurnaceId);
        var at = command.HappenedAt ?? wrong.ObservedAt;
        var isDip = wrong.Kind == FurnaceMetalKind.Dipped;
        var kg = wrong.Kind switch
        {
            FurnaceMetalKind.Dipped => command.Kg - await Before(db, wrong, at, cancellation),
            FurnaceMetalKind.Pigged => 0 - command.Kg,
            _ => command.Kg,
        };
        var isSame = isDip ? wrong.LevelKg == command.Kg && wrong.PlusMinusKg == command.PlusMinusKg : wrong.Kg == kg;
        if (isSame && wrong.ObservedAt == at) return Refuse("", "correction.nothing");

        await writing.Replace(
            wrong, null, kg, at, command.Reason, cancellation, isDip ? command.Kg : null, isDip ? command.PlusMinusKg : null);
        if (isDip) await CorrectHeel(writing, wrong, command, at, cancellation);
        var right = await db.FurnaceMetals.SingleAsync(m => m.SupersedesId == wrong.Id, cancellation);
        if (wrong.HeatId is { } of) await writing.FollowHeel(await db.Heats.SingleAsync(h => h.Id == of, cancellation), command.Reason, cancellation);
        else await writing.FollowStart(wrong.FurnaceId, at < wrong.ObservedAt ? at : wrong.ObservedAt, command.Reason, cancellation);
        ChangeNotice[] notices = [new(ChangeKind.Furnace, wrong.FurnaceId)];
        return Done(right.Id, wrong.HeatId is { } heat ? [.. notices, new(ChangeKind.Heat, heat)] : notices);
    }

    /// <summary>
    /// What the ledger showed before the dip, kg. A dip that it is moved past takes up what it had booked; what was entered after it for the same
    /// microsecond came after it.
    /// </summary>
    internal static async Task<double> Before(RecordsContext db, FurnaceMetal dip, DateTimeOffset at, CancellationToken cancellation)
    {
        var others = db.InForce<FurnaceMetal>().AsNoTracking().Where(m => m.FurnaceId == dip.FurnaceId && m.Id != dip.Id && m.ObservedAt <= at);
        var kg = await others.SumAsync(m => m.Kg, cancellation);
        if (at == dip.ObservedAt)
        {
            foreach (var line in await others.Where(m => m.ObservedAt == at).ToListAsync(cancellation))
                if (await db.FirstOf(line, cancellation) > await db.FirstOf(dip, cancellation)) kg -= line.Kg;
        }

        return await others.AnyAsync(m => m.Kind == FurnaceMetalKind.Dipped && m.ObservedAt > dip.ObservedAt, cancellation) ? kg + dip.Kg : kg;
    }

    // A dip of a furnace without a heat said what the heel is, at the same time; what the dip took up since has another entry.
    private static async Task CorrectHeel(Writing writing, FurnaceMetal dip, Command command, DateTimeOffset at, CancellationToken cancellation)
    {
        var heel = await writing.Db.InForce<Heel>().AsNoTracking().Include(h => h.Percents)
            .SingleOrDefaultAsync(h => h.ObservedAt == dip.ObservedAt && h.FurnaceId == dip.FurnaceId && dip.HeatId == null, cancellation);
        if (heel is not null) await writing.Replace(heel, command.Kg, at, command.Reason, cancellation);
    }
}
