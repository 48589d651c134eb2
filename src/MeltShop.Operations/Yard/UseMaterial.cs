using MeltShop.Charging.Plans;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Storing;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Yard;

/// <summary>
/// Takes a material out of use, or into use again. Out of use it is offered in no plan and no card; what was made with it still names it.
/// Answers the material's new version.
/// </summary>
public sealed class UseMaterial(Recorder recorder, TimeProvider time) : Operation<UseMaterial.Command, Guid>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, long MaterialId, Guid Version, bool IsActive) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields)
    {
        // Nothing of it can be wrong before the records are asked.
    }

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        await writing.Db.LockMaterial(command.MaterialId, cancellation);
        var material = await writing.Db.Materials.FindAsync([command.MaterialId], cancellation);
        if (material is null) return Refuse("materialId", "material.unknown");
        if (material.Version != command.Version) return Stale(writing, material, command.Version);
        if (!command.IsActive && await HeatWith(writing.Db, material.Id, material.Code, cancellation) is { } heat) return Refuse("isActive", "material.inUse", heat);

        material.IsActive = command.IsActive;
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(material.Version, new ChangeNotice(ChangeKind.Material, material.Id, material.Version));
    }

    /// <summary>The number of a heat in a furnace that is charged with it, or has a ladle prepared with it.</summary>
    private static async Task<string?> HeatWith(RecordsContext db, long id, string code, CancellationToken cancellation)
    {
        var heats = db.Heats.Where(h => h.State == HeatState.Charging || h.State == HeatState.Bath || h.State == HeatState.Tapping);
        var ladles =
            from card in db.InForce<PocketCard>()
            join ladle in db.TreatedLadles on card.TreatedLadleId equals ladle.Id
            where ladle.State == TreatedLadleState.Prepared
                && (card.AlloyMaterialId == id || card.InoculantMaterialId == id || card.CoverMaterialId == id || card.PearliteMaterialId == id)
            select ladle.HeatId;
        if (await heats.Where(h => ladles.Contains(h.Id)).Select(h => h.Number).FirstOrDefaultAsync(cancellation) is { } treated) return treated;
        var charged = await heats.Where(h => h.State == HeatState.Charging).Select(h => new { h.Number, db.Plans.Single(p => p.Id == h.PlanId).Answer }).ToListAsync(cancellation);
        return charged.Find(h => StoredJson.Value<ChargePlan>(h.Answer).Lines.Any(l => l.Code == code))?.Number;
    }
}
