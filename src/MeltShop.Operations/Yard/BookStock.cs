using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Yard;

/// <summary>Books a delivery, or the stock as it was counted. Answers the stock afterwards, kg.</summary>
public sealed class BookStock(Recorder recorder, TimeProvider time) : Operation<BookStock.Command, double>(recorder, time)
{
    /// <param name="Kind"><see cref="StockKind.Received"/> or <see cref="StockKind.Counted"/>; what is charged books itself.</param>
    /// <param name="Kg">What came in, or what lies there.</param>
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long MaterialId, StockKind Kind, double Kg)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields)
    {
        if (command.Kind is StockKind.Received) fields.Mass("kg", command.Kg);
        else if (command.Kind is StockKind.Counted) fields.MassOrZero("kg", command.Kg);
        else fields.Add("kind", "choice.unknown", command.Kind.ToString());
    }

    protected override async Task<Written<double>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var material = await writing.Db.Materials.AsNoTracking().SingleOrDefaultAsync(m => m.Id == command.MaterialId, cancellation);
        if (material is null) return Refuse("materialId", "material.unknown");

        var before = await StockLedger.Sum(writing, material.Id, cancellation);
        var change = command.Kind is StockKind.Counted ? command.Kg - before : command.Kg;
        await writing.Book(material.Id, command.Kind, change, heatId: null, cancellation);
        if (material.StockKg is null) await writing.SetStock(material.Id, before + change, cancellation);
        return Done(before + change, new ChangeNotice(ChangeKind.Material, material.Id));
    }
}
