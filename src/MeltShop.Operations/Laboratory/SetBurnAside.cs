using MeltShop.Operations.Checking;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Laboratory;

/// <summary>
/// Sets a burn aside for all its elements, or takes it back: the values stay visible, the mean is over the burns that count. Who did
/// it and why is a fact of its own. Castings whose release rested on the sample are held again. Answers the means by element symbol.
/// </summary>
public sealed class SetBurnAside(Recorder recorder, TimeProvider time)
    : Operation<SetBurnAside.Command, IReadOnlyDictionary<string, double>>(recorder, time)
{
    /// <param name="Ordinal">The burn, from 1.</param>
    /// <param name="SetAside">False to take it back.</param>
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long SampleId, int Ordinal, string Reason, bool SetAside = true)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist, Role.Inspector];

    protected override void Check(Command command, FieldCheck fields) => fields.Text("reason", command.Reason, 500);

    protected override async Task<Written<IReadOnlyDictionary<string, double>>> Write(
        Writing writing, Command command, CancellationToken cancellation)
    {
        await writing.Db.LockSample(command.SampleId, cancellation);
        var sample = await writing.Db.Samples
            .Include(s => s.Means)
            .Include(s => s.Burns).ThenInclude(b => b.Readings)
            .SingleOrDefaultAsync(s => s.Id == command.SampleId, cancellation);
        if (sample is null) return Refuse("sampleId", "sample.unknown");
        if (await writing.Db.Standing(sample, "sampleId", cancellation) is { } finding) return Written<IReadOnlyDictionary<string, double>>.Refused(finding);
        var burn = sample.Burns.SingleOrDefault(b => b.Ordinal == command.Ordinal);
        if (burn is null) return Refuse("ordinal", "burn.unknown");
        if (burn.SetAside == command.SetAside) return Refuse("ordinal", command.SetAside ? "burn.aside" : "burn.counts");

        burn.SetAside = command.SetAside;
        burn.SetAsideReason = command.SetAside ? command.Reason : null;
        writing.Db.Add(new BurnDecision
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = writing.Stamp.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            Reason = command.Reason,
            SampleId = sample.Id,
            Ordinal = command.Ordinal,
            SetAside = command.SetAside,
        });
        writing.Db.RemoveRange(SampleMeans.Update(sample.Means, SampleMeans.Of(sample.Burns)));
        await writing.Db.SaveChangesAsync(cancellation);
        await writing.FollowHeel(await writing.Db.Heats.SingleAsync(h => h.Id == sample.HeatId, cancellation), command.Reason, cancellation);
        ChangeNotice[] held =
        [
            .. await writing.Hold(await writing.Db.RestingOn(sample, cancellation), command.Reason, cancellation), .. await writing.HoldLow(sample, cancellation),
        ];
        return Done(
            sample.Means.ToDictionary(m => m.Element.Symbol, m => m.Percent),
            [new ChangeNotice(ChangeKind.Sample, sample.Id), new ChangeNotice(ChangeKind.Heat, sample.HeatId), .. held]);
    }
}
