using MeltShop.Operations.Checking;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Laboratory;

/// <summary>
/// Records a coin with its burns, and the mean over them. The first bath sample turns a charging heat into a bath; a sample of the
/// last metal says that the ladle is poured, and holds it. One under the magnesium floor holds again what was released. Answers the sample.
/// </summary>
public sealed class RecordSample(Recorder recorder, TimeProvider time) : Operation<RecordSample.Command, long>(recorder, time)
{
    /// <param name="ObservedAt">When the coin was taken.</param>
    /// <param name="InstrumentId">What measured it; null where nobody said.</param>
    /// <param name="GreyFracture">The coin broke grey.</param>
    /// <param name="IsMeanOnly">The one burn is the mean that the instrument sent.</param>
    /// <param name="Figures">Of a cup or a chill wedge, which have no burns.</param>
    /// <param name="CoinOnItsWayId">The coin that had been sent ahead, whose result this is.</param>
    public sealed record Command(
        Guid EntryKey,
        DateTimeOffset ObservedAt,
        long HeatId,
        long? TreatedLadleId,
        SampleKind Kind,
        IReadOnlyList<IReadOnlyList<ReadingInput>> Burns,
        string? CoinNumber = null,
        string? Remarks = null,
        long? InstrumentId = null,
        bool GreyFracture = false,
        bool IsMeanOnly = false,
        IReadOnlyList<FigureInput>? Figures = null,
        long? CoinOnItsWayId = null) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor, Role.Inspector];

    protected override void Check(Command command, FieldCheck fields)
    {
        SampleFields.Check(command.Kind, command.TreatedLadleId, command.CoinNumber, command.Remarks, fields);
        ReadingInputs.Check(command.Kind, command.Burns, fields);
        FigureInputs.Check(command.Kind, command.Figures ?? [], fields);
        if (command.IsMeanOnly && command.Burns.Count != 1) fields.Add("burns", "sample.meanIsOne");
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var heat = await writing.Db.LockedHeat(command.HeatId, cancellation); // and with it its coins on their way, each of which has one result
        if (heat is null) return Refuse("heatId", "heat.unknown");
        var late = IsOfBath(command.Kind) && heat.ClosedAt < writing.Stamp.ObservedAt;
        if (heat.State == HeatState.Cancelled || late) return Refuse("heatId", "state.wrong", heat.State.ToString());

        var ladle = command.TreatedLadleId is { } id ? await writing.Db.TreatedLadles.FindAsync([id], cancellation) : null;
        if (command.TreatedLadleId is not null && ladle?.HeatId != heat.Id) return Refuse("treatedLadleId", "ladle.unknown");
        if (ladle is not null && !SampleFields.IsReady(ladle.State, command.Kind)) return Refuse("treatedLadleId", "state.wrong", ladle.State.ToString());
        if (await SampleOrigin.Check(writing.Db, heat.Id, command.InstrumentId, command.CoinOnItsWayId, cancellation) is { } finding)
        {
            return Written<long>.Refused(finding);
        }

        var burns = ReadingInputs.Rows(command.Burns);
        var sample = new Sample
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
            InstrumentId = command.InstrumentId,
            GreyFracture = command.GreyFracture,
            IsMeanOnly = command.IsMeanOnly,
            CoinOnItsWayId = command.CoinOnItsWayId,
            Figures = FigureInputs.Rows(command.Figures ?? []),
            Burns = burns,
            Means = SampleMeans.Of(burns),
        };
        writing.Db.Add(sample);
        writing.Came(command.Kind, heat, ladle);
        await writing.Db.SaveChangesAsync(cancellation);
        if (IsOfBath(command.Kind)) await writing.FollowHeel(heat, reason: null, cancellation); // one that comes after the heat's end
        var held = await writing.HoldLow(sample, cancellation);

        ChangeNotice[] notices = [.. held, new(ChangeKind.Sample, sample.Id), new(ChangeKind.Heat, heat.Id, heat.Version)];
        return Done(sample.Id, ladle is null ? notices : [.. notices, new(ChangeKind.TreatedLadle, ladle.Id, ladle.Version)]);
    }

    private static bool IsOfBath(SampleKind kind) => SampleKinds.OfTheBath.Contains(kind);
}
