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
        : Operations.Command(EntryKey, ObservedAt)
    {
        /// <summary>The lot that came in, or that was counted, as it stands on the bag; null for a count of all that lies there, and where nobody says.</summary>
        public string? Lot { get; init; }

        /// <summary>The bin in which it lies, as the shop calls it; null where nobody says, and it lies where it lay.</summary>
        public string? Bin { get; init; }
    }

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields)
    {
        if (command.Kind is StockKind.Received) fields.Mass("kg", command.Kg);
        else if (command.Kind is StockKind.Counted) fields.MassOrZero("kg", command.Kg);
        else fields.Add("kind", "choice.unknown", command.Kind.ToString());
        fields.OptionalText("lot", command.Lot, 60);
        fields.OptionalText("bin", command.Bin, StockPlaces.LongestBin);
    }

    protected override async Task<Written<double>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        await writing.Db.LockMaterial(command.MaterialId, cancellation);
        var material = await writing.Db.Materials.AsNoTracking().SingleOrDefaultAsync(m => m.Id == command.MaterialId, cancellation);
        if (material is null) return Refuse("materialId", "material.unknown");

        var lot = StockPlaces.Named(command.Lot);
        var counted = command.Kind is StockKind.Counted ? await writing.Db.Sum(material.Id, lot, writing.Stamp.ObservedAt, cancellation) : 0;
        await writing.Book(material.Id, command.Kind, command.Kg - counted, heatId: null, lot, cancellation);
        if (StockPlaces.Named(command.Bin) is { } bin) writing.Db.Add(writing.Stamp.Place(material.Id, lot, bin));
        var stock = await writing.Db.Sum(material.Id, null, DateTimeOffset.MaxValue, cancellation);
        if (material.StockKg is null) await writing.SetStock(material.Id, stock, cancellation);
        return Done(stock, new ChangeNotice(ChangeKind.Material, material.Id));
    }
}
