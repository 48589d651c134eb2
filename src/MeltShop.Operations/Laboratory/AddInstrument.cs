using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Laboratory;

/// <summary>Takes an instrument into the shop. Answers it.</summary>
public sealed class AddInstrument(Recorder recorder, TimeProvider time) : Operation<AddInstrument.Command, long>(recorder, time)
{
    /// <param name="SendsMeanOnly">It sends the mean of its burns and not the burns.</param>
    /// <param name="Elements">What it measures.</param>
    /// <param name="FiguresSource">Where the repeatabilities come from; needed where there is one.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, string Code, string Name, InstrumentKind Kind, bool SendsMeanOnly,
        IReadOnlyList<InstrumentElementInput> Elements, string? FiguresSource = null) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Text("code", command.Code, 60);
        fields.Text("name", command.Name);
        fields.Choice("kind", command.Kind);
        InstrumentElementInputs.Check(command.Elements, command.FiguresSource, fields);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        if (await writing.Db.Instruments.AnyAsync(i => i.Code == command.Code, cancellation)) return Refuse("code", "code.taken", command.Code);
        var instrument = new Instrument
        {
            Code = command.Code,
            Name = command.Name,
            Kind = command.Kind,
            SendsMeanOnly = command.SendsMeanOnly,
            FiguresSource = command.FiguresSource,
            Elements =
            [
                .. command.Elements.Select(e => new InstrumentElement { Element = Element.Parse(e.Element), Repeatability = e.Repeatability, GuardFactor = e.GuardFactor }),
            ],
        };
        writing.Db.Add(instrument);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(instrument.Id, new ChangeNotice(ChangeKind.Instrument, instrument.Id, instrument.Version));
    }
}
