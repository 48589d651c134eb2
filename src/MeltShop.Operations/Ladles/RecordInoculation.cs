using MeltShop.Operations.Checking;
using MeltShop.Operations.Yard;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Ladles;

/// <summary>Records an inoculation after that of the card, in the ladle, the stream or the mould: its clock starts anew. Answers the fact.</summary>
public sealed class RecordInoculation(Recorder recorder, TimeProvider time) : Operation<RecordInoculation.Command, long>(recorder, time)
{
    /// <param name="Lot">As it stands on the bag; null where nobody says.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long TreatedLadleId, InoculationPlace Place, long MaterialId, double Kg, string? Lot = null)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Choice("place", command.Place);
        fields.Mass("kg", command.Kg);
        fields.OptionalText("lot", command.Lot, 60);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var (ladle, finding) = await writing.Find(command.TreatedLadleId, "treatedLadleId", cancellation);
        if (finding is not null) return Written<long>.Refused(finding);
        if (!await writing.Db.Materials.AnyAsync(m => m.Id == command.MaterialId && m.Uses.HasFlag(MaterialUses.Inoculation), cancellation))
        {
            return Refuse("materialId", "material.unknown");
        }

        var fact = new LadleInoculation
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = writing.Stamp.ObservedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            TreatedLadleId = ladle!.Treated.Id,
            Place = command.Place,
            MaterialId = command.MaterialId,
            Kg = command.Kg,
            Lot = command.Lot?.Trim(),
        };
        writing.Db.Add(fact);
        await writing.Book(command.MaterialId, StockKind.Added, -command.Kg, ladle.Treated.HeatId, fact.Lot, cancellation);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(
            fact.Id,
            new ChangeNotice(ChangeKind.TreatedLadle, ladle.Treated.Id, ladle.Treated.Version),
            new ChangeNotice(ChangeKind.Material, command.MaterialId));
    }
}
