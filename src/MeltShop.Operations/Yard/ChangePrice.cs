using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Yard;

/// <summary>Changes the price of a material; the prices before it stay in the records. Answers the new version.</summary>
public sealed class ChangePrice(Recorder recorder, TimeProvider time) : Operation<ChangePrice.Command, Guid>(recorder, time)
{
    /// <param name="PricePerTonne">Per 1000 kg weighed, in the site's currency; zero or below is allowed.</param>
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long MaterialId, Guid Version, decimal PricePerTonne)
        : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields) => fields.Money("pricePerTonne", command.PricePerTonne);

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var material = await writing.Db.Materials.FindAsync([command.MaterialId], cancellation);
        if (material is null) return Refuse("materialId", "material.unknown");
        if (material.Version != command.Version) return Stale(writing, material, command.Version);

        material.PricePerTonne = command.PricePerTonne;
        writing.Db.Add(writing.Stamp.Price(material.Id, command.PricePerTonne));
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(material.Version, new ChangeNotice(ChangeKind.Material, material.Id));
    }
}
