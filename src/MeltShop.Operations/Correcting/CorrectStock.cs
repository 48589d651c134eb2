using MeltShop.Operations.Checking;
using MeltShop.Records;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Correcting;

/// <summary>Puts a delivery or a count right. What was charged is corrected at its weighing. Answers the line that stands now.</summary>
public sealed class CorrectStock(Recorder recorder, TimeProvider time) : Operation<CorrectStock.Command, long>(recorder, time)
{
    /// <param name="StockFactId">The line that is wrong.</param>
    /// <param name="Kg">What came in, or what lay there, kg.</param>
    /// <param name="HappenedAt">When it came in or was counted; null where that was right.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long StockFactId, double Kg, string Reason, DateTimeOffset? HappenedAt = null)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.MassOrZero("kg", command.Kg);
        fields.Correction(command, command.Reason, command.HappenedAt);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var wrong = await db.StockFacts.AsNoTracking().SingleOrDefaultAsync(s => s.Id == command.StockFactId, cancellation);
        if (await db.Standing(wrong, "stockFactId", cancellation) is { } finding) return Written<long>.Refused(finding);
        if (wrong!.Kind is not (StockKind.Received or StockKind.Counted)) return Refuse("stockFactId", "correction.elsewhere");
        await db.LockMaterial(wrong.MaterialId, cancellation);
        var at = command.HappenedAt ?? wrong.ObservedAt;
        var kg = wrong.Kind == StockKind.Counted ? command.Kg - await Before(db, wrong, at, cancellation) : command.Kg;
        if ((wrong.Kg, wrong.ObservedAt) == (kg, at)) return Refuse("", "correction.nothing");

        await writing.Replace(wrong, wrong.MaterialId, wrong.Kind, kg, wrong.HeatId, at, command.Reason, cancellation);
        var right = await db.StockFacts.SingleAsync(s => s.SupersedesId == wrong.Id, cancellation);
        return Done(right.Id, new ChangeNotice(ChangeKind.Material, wrong.MaterialId));
    }

    /// <summary>What the ledger showed before the count, kg. A count that it is moved past takes up what it had booked.</summary>
    private static async Task<double> Before(RecordsContext db, StockFact count, DateTimeOffset at, CancellationToken cancellation)
    {
        var others = db.InForce<StockFact>()
            .Where(s => s.MaterialId == count.MaterialId && s.Id != count.Id && (count.Lot == null || s.Lot == count.Lot) && s.ObservedAt <= at);
        var kg = await others.SumAsync(s => s.Kg, cancellation);
        var isPassed = await others.AnyAsync(s => s.Kind == StockKind.Counted && s.Lot == count.Lot && s.ObservedAt > count.ObservedAt, cancellation);
        return isPassed ? kg + count.Kg : kg;
    }
}
