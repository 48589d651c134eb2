using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Yard;

/// <summary>
/// Says how much of a material becomes metal, where nobody knew: from then on it can be planned from and weighed in. A yield that is known
/// stands in furnace ledgers and kept plans, and is not changed. Answers the material's new version.
/// </summary>
public sealed class TellYield(Recorder recorder, TimeProvider time) : Operation<TellYield.Command, Guid>(recorder, time)
{
    /// <param name="MetallicYieldPercent">Above 0 to 100 %.</param>
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long MaterialId, double MetallicYieldPercent) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields) => fields.Yield("metallicYieldPercent", command.MetallicYieldPercent);

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var material = await writing.Db.Materials.FindAsync([command.MaterialId], cancellation);
        if (material is null) return Refuse("materialId", "material.unknown");
        if (material.MetallicYieldPercent is { } known) return Refuse("metallicYieldPercent", "yield.known", known);

        material.MetallicYieldPercent = command.MetallicYieldPercent;
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(material.Version, new ChangeNotice(ChangeKind.Material, material.Id));
    }
}
