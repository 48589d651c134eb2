using MeltShop.Operations.Checking;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Correcting;

/// <summary>
/// Puts the mass or the temperature of a tap right. Residual magnesium, the minutes to its floor, the inoculant and both ledgers
/// follow; castings that were released are held again. Answers the tap that stands now.
/// </summary>
public sealed class CorrectTap(Recorder recorder, TimeProvider time) : Operation<CorrectTap.Command, long>(recorder, time)
{
    /// <param name="TapId">The one that is wrong.</param>
    /// <param name="HappenedAt">When it was tapped; null where that was right.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long TapId, double Kg, double? TemperatureC, string Reason, DateTimeOffset? HappenedAt = null)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Mass("kg", command.Kg);
        if (command.TemperatureC is { } temperature) fields.Temperature("temperatureC", temperature);
        fields.Correction(command, command.Reason, command.HappenedAt);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var wrong = await db.Taps.AsNoTracking().SingleOrDefaultAsync(t => t.Id == command.TapId, cancellation);
        if (await db.Standing(wrong, "tapId", cancellation) is { } finding) return Written<long>.Refused(finding);
        if (wrong!.FromTreatedLadleId is not null) return Refuse("tapId", "correction.elsewhere");
        var at = command.HappenedAt ?? wrong.ObservedAt;
        if ((wrong.Kg, wrong.TemperatureC, wrong.ObservedAt) == (command.Kg, command.TemperatureC, at)) return Refuse("", "correction.nothing");

        await db.LockHeats(cancellation, wrong.HeatId);
        var line = await db.LineOf(wrong.EntryKey, FurnaceMetalKind.Tapped, cancellation);
        var treated = await db.TreatedLadles.SingleAsync(l => l.Id == wrong.TreatedLadleId, cancellation);
        if (treated.ReactionEndedAt < at) return Refuse("happenedAt", "time.afterReaction", treated.ReactionEndedAt);
        var card = await db.InForce<PocketCard>().AsNoTracking().Where(c => c.TreatedLadleId == treated.Id).OrderBy(c => c.Id).LastAsync(cancellation);
        var startedAt = wrong.StartedAt is { } started ? at - (wrong.ObservedAt - started) : (DateTimeOffset?)null;
        var right = writing.Tap(treated, card, command.Kg, command.TemperatureC, at, startedAt, wrong.Id, command.Reason);
        db.Add(right);
        db.Expect(treated, treated.Version); // whoever decides about this ladle has to see the new figures first
        await db.SaveChangesAsync(cancellation);
        await writing.Replace(line, null, -command.Kg, at, command.Reason, cancellation);
        var stock = await db.StockLineOf(wrong.EntryKey, card.InoculantMaterialId, StockKind.Added, cancellation);
        var inoculantKg = PocketQuestion.InoculantKg(card.InoculantKg, card.PlannedKg, command.Kg);
        await writing.Replace(stock, stock.MaterialId, stock.Kind, -inoculantKg, stock.HeatId, at, command.Reason, cancellation);
        await writing.FollowHeel(await db.Heats.SingleAsync(h => h.Id == treated.HeatId, cancellation), command.Reason, cancellation);
        await writing.Hold([treated.Id], command.Reason, cancellation);
        return Done(
            right.Id,
            new ChangeNotice(ChangeKind.TreatedLadle, treated.Id, treated.Version),
            new ChangeNotice(ChangeKind.Heat, treated.HeatId),
            new ChangeNotice(ChangeKind.Furnace, line.FurnaceId),
            new ChangeNotice(ChangeKind.Material, stock.MaterialId));
    }
}
