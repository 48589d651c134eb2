using MeltShop.Operations.Checking;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>
/// Ticks a mould off as poured. One whose pour ended after a limit of its ladle is held at once, with the limit that came first, and
/// so is one from a pouring furnace that took iron of a ladle that came back low; what was released of the ladle is held again.
/// </summary>
public sealed class RecordMould(Recorder recorder, TimeProvider time) : Operation<RecordMould.Command, RecordMould.Result>(recorder, time)
{
    /// <param name="ObservedAt">When its pour ended.</param>
    /// <param name="Label">What is written on the mould.</param>
    /// <param name="PourSeconds">How long the pour took.</param>
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long TreatedLadleId, string Label, double Kg, double PourSeconds)
        : Operations.Command(EntryKey, ObservedAt);

    /// <param name="LateFor">The limit after which it was poured; null where it was in time.</param>
    /// <param name="LeftKg">What is left in the ladle by the scales, kg.</param>
    public sealed record Result(long MouldId, PouringLimitKind? LateFor, DateTimeOffset? StopAt, double LeftKg);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Text("label", command.Label, 60);
        fields.Mass("kg", command.Kg);
        fields.NotNegative("pourSeconds", command.PourSeconds);
    }

    protected override async Task<Written<Result>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var (ladle, finding) = await writing.Find(command.TreatedLadleId, "treatedLadleId", cancellation);
        if (finding is not null) return Written<Result>.Refused(finding);
        var treated = ladle!.Treated;
        await db.LockLadles(cancellation, treated);
        var label = command.Label.Trim();
        if (await db.InForce<PouredMould>().AnyAsync(m => m.TreatedLadleId == treated.Id && !m.IsWithdrawn && m.Label == label, cancellation))
        {
            return Refuse("label", "mould.known", label);
        }

        var mass = await LadleContents.One(db, treated.Id, cancellation);
        if (command.Kg > mass.AtMostKg) return Refuse("kg", "ladle.short", Math.Max(0, mass.LeftKg));

        var at = writing.Stamp.ObservedAt;
        var late = PouringLimits.ReachedBefore(await LadleTimesRows.One(db, treated.Id, at, cancellation), at);
        var mould = new PouredMould
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = at,
            EnteredAt = writing.Stamp.EnteredAt,
            TreatedLadleId = treated.Id,
            Label = label,
            FirstAt = at.AddSeconds(-command.PourSeconds),
            Kg = command.Kg,
            LateFor = late?.Kind,
            StopAt = late?.StopAt,
        };
        db.Add(mould);
        var isDoubtful = late is not null || (await LowSources.Of(db, treated.Id, cancellation)).Any(source => source.Concerns(at));
        if (isDoubtful) db.Expect(treated, treated.Version); // whoever decides about this ladle has to see the mould first
        await db.SaveChangesAsync(cancellation);
        if (isDoubtful) await writing.Hold([treated.Id], label, cancellation);
        return Done(
            new Result(mould.Id, late?.Kind, late?.StopAt, mass.LeftKg - command.Kg),
            new ChangeNotice(ChangeKind.TreatedLadle, treated.Id, treated.Version),
            new ChangeNotice(ChangeKind.Heat, treated.HeatId));
    }
}
