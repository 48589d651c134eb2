using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Laboratory;

/// <summary>
/// Says anew what an instrument measures, how far it scatters and how wide the guard band is, or takes it out of use. Samples of
/// before are judged anew when they are shown; decisions that were made stay as they were made. Answers the new version.
/// </summary>
public sealed class SetInstrument(Recorder recorder, TimeProvider time) : Operation<SetInstrument.Command, Guid>(recorder, time)
{
    /// <inheritdoc cref="AddInstrument.Command"/>
    /// <param name="Elements">All of them: one that is left out is no longer measured.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long InstrumentId, Guid Version, string Name, bool IsActive,
        IReadOnlyList<InstrumentElementInput> Elements, string? FiguresSource) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Text("name", command.Name);
        InstrumentElementInputs.Check(command.Elements, command.FiguresSource, fields);
    }

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var instrument = await writing.Db.Instruments.Include(i => i.Elements).SingleOrDefaultAsync(i => i.Id == command.InstrumentId, cancellation);
        if (instrument is null) return Refuse("instrumentId", "instrument.unknown");
        if (instrument.Version != command.Version) return Stale(writing, instrument, command.Version);
        writing.Db.Expect(instrument, command.Version);
        (instrument.Name, instrument.IsActive, instrument.FiguresSource) = (command.Name, command.IsActive, command.FiguresSource);
        var given = command.Elements.ToDictionary(e => Element.Parse(e.Element));
        writing.Db.RemoveRange(instrument.Elements.Where(e => !given.ContainsKey(e.Element)));
        foreach (var (element, input) in given)
        {
            var row = instrument.Elements.Find(e => e.Element == element);
            if (row is null) instrument.Elements.Add(row = new() { Element = element });
            (row.Repeatability, row.GuardFactor) = (input.Repeatability, input.GuardFactor);
        }

        await writing.Db.SaveChangesAsync(cancellation);
        return Done(instrument.Version, new ChangeNotice(ChangeKind.Instrument, instrument.Id, instrument.Version));
    }
}
