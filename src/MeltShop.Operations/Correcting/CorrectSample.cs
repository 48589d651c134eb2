using MeltShop.Operations.Checking;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Ladles;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Correcting;

/// <summary>
/// Puts a sample right, or moves it to the heat or the ladle that it belongs to. The wrong one stays beside it. Castings whose release
/// rested on it are held again. Answers the sample that stands now.
/// </summary>
public sealed class CorrectSample(Recorder recorder, TimeProvider time) : Operation<CorrectSample.Command, long>(recorder, time)
{
    /// <param name="SampleId">The one that is wrong.</param>
    /// <param name="Burns">The burns as they should read; null keeps them, with those that are set aside.</param>
    /// <param name="HappenedAt">When the coin was taken; null where that was right.</param>
    /// <param name="GreyFracture">Whether the coin broke grey; null where that was right.</param>
    /// <param name="InstrumentId">What measured it; null where that was right.</param>
    /// <param name="Figures">Of a cup or a chill wedge, as they should read; null keeps them.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long SampleId, long HeatId, long? TreatedLadleId, SampleKind Kind,
        IReadOnlyList<IReadOnlyList<ReadingInput>>? Burns, string? CoinNumber, string? Remarks, string Reason, DateTimeOffset? HappenedAt = null,
        bool? GreyFracture = null, IReadOnlyList<FigureInput>? Figures = null, long? InstrumentId = null)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor, Role.Inspector];

    protected override void Check(Command command, FieldCheck fields)
    {
        SampleFields.Check(command.Kind, command.TreatedLadleId, command.CoinNumber, command.Remarks, fields);
        if (command.Burns is { } burns) ReadingInputs.Check(command.Kind, burns, fields);
        if (command.Figures is { } figures) FigureInputs.Check(command.Kind, figures, fields);
        fields.Correction(command, command.Reason, command.HappenedAt);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        await db.LockSample(command.SampleId, cancellation, command.HeatId);
        var wrong = await db.Samples.AsNoTracking().Include(s => s.Means).Include(s => s.Figures).Include(s => s.Burns).ThenInclude(b => b.Readings)
            .SingleOrDefaultAsync(s => s.Id == command.SampleId, cancellation);
        if (await db.Standing(wrong, "sampleId", cancellation) is { } finding) return Written<long>.Refused(finding);
        var heat = await db.Heats.FindAsync([command.HeatId], cancellation);
        if (heat is null) return Refuse("heatId", "heat.unknown");
        if (heat.Id != wrong!.HeatId && heat.State == HeatState.Cancelled) return Refuse("heatId", "state.wrong", heat.State.ToString());
        var ladle = command.TreatedLadleId is { } id ? await db.TreatedLadles.FindAsync([id], cancellation) : null;
        if (command.TreatedLadleId is not null && ladle?.HeatId != heat.Id) return Refuse("treatedLadleId", "ladle.unknown");
        if (ladle is not null && !SampleFields.IsReady(ladle.State, command.Kind)) return Refuse("treatedLadleId", "state.wrong", ladle.State.ToString());
        if (command.Kind != wrong.Kind && (SampleKinds.OfFigures.Contains(command.Kind) || SampleKinds.OfFigures.Contains(wrong.Kind)))
        {
            return Refuse("kind", "sample.otherFigures");
        }

        if (command.InstrumentId is { } instrument && instrument != wrong.InstrumentId && !await db.Instruments.AnyAsync(i => i.Id == instrument && i.IsActive, cancellation))
        {
            return Refuse("instrumentId", "instrument.unknown");
        }

        var right = Right(writing.Stamp, wrong, command);
        if (right.IsSameAs(wrong)) return Refuse("", "correction.nothing");
        db.Add(right);
        await db.SaveChangesAsync(cancellation);

        ChangeNotice[] held = right.SpeaksAs(wrong) ? []
            : [.. await writing.Hold(await db.RestingOn(wrong, cancellation), command.Reason, cancellation), .. await writing.HoldLow(right, cancellation)];
        await writing.Follow(wrong.HeatId, cancellation);
        await writing.Follow(heat.Id, cancellation);
        if (command.Kind == SampleKind.LastMetal && ladle!.State == TreatedLadleState.Pouring) writing.Step(ladle, TreatedLadleState.Held);
        await db.SaveChangesAsync(cancellation);
        long[] heats = [.. new[] { wrong.HeatId, heat.Id }.Distinct()];
        foreach (var heatId in heats) await writing.FollowHeel((await db.Heats.FindAsync([heatId], cancellation))!, command.Reason, cancellation);
        long?[] ladles = [wrong.TreatedLadleId, ladle?.Id];
        return Done(right.Id,
        [
            new(ChangeKind.Sample, wrong.Id), new(ChangeKind.Sample, right.Id), .. held,
            .. right.InstrumentId == wrong.InstrumentId ? Array.Empty<ChangeNotice>() : [.. new[] { wrong.InstrumentId, right.InstrumentId }.OfType<long>().Select(i => new ChangeNotice(ChangeKind.Instrument, i))],
            .. heats.Select(h => new ChangeNotice(ChangeKind.Heat, h)),
            .. ladles.OfType<long>().Distinct().Select(l => new ChangeNotice(ChangeKind.TreatedLadle, l)),
        ]);
    }

    private static Sample Right(Stamp stamp, Sample wrong, Command command)
    {
        var burns = command.Burns is { } retyped ? ReadingInputs.Rows(retyped) : SampleCopies.Of(wrong.Burns);
        foreach (var burn in burns)
        {
            // Whoever set a burn aside did not mean the digits: it stays aside until somebody takes it back.
            if (wrong.Burns.Find(b => b.Ordinal == burn.Ordinal) is { SetAside: true } aside) (burn.SetAside, burn.SetAsideReason) = (true, aside.SetAsideReason);
        }

        return new Sample
        {
            EntryKey = stamp.EntryKey,
            PersonId = stamp.PersonId,
            ObservedAt = command.HappenedAt ?? wrong.ObservedAt,
            EnteredAt = stamp.EnteredAt,
            SupersedesId = wrong.Id,
            Reason = command.Reason,
            HeatId = command.HeatId,
            TreatedLadleId = command.TreatedLadleId,
            Kind = command.Kind,
            CoinNumber = command.CoinNumber,
            Remarks = command.Remarks,
            InstrumentId = command.InstrumentId ?? wrong.InstrumentId,
            GreyFracture = command.GreyFracture ?? wrong.GreyFracture,
            IsMeanOnly = wrong.IsMeanOnly,
            CoinOnItsWayId = wrong.CoinOnItsWayId,
            Figures = command.Figures is { } figures ? FigureInputs.Rows(figures) : SampleCopies.Of(wrong.Figures),
            Burns = burns,
            Means = SampleMeans.Of(burns),
        };
    }
}
