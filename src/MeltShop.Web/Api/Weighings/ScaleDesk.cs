using MeltShop.Metallurgy;
using MeltShop.Operations.Heats;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Api.Weighings;

/// <summary>Where weighings of scales arrive: finds what the sender names, and hands them to the operation that people use.</summary>
internal sealed class ScaleDesk(IDbContextFactory<RecordsContext> contexts, WeighIn weighIn, TimeProvider clock)
{
    /// <param name="station">Name of the sender's key.</param>
    public async Task<(Weighing? Weighing, IReadOnlyList<Finding> Findings)> Take(string station, WeighingRequest request, CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        var findings = new List<Finding>();
        var heat = await db.Heats.AsNoTracking().SingleOrDefaultAsync(h => h.Number == request.Heat, cancellation);
        var material = await db.Materials.AsNoTracking().SingleOrDefaultAsync(m => m.Code == request.Material, cancellation);
        var by = await ScaleSender.Person(db, station, request.By, cancellation);
        if (heat is null) findings.Add(new("heat", "heat.unknown", request.Heat));
        if (material is null) findings.Add(new("material", "material.unknown", request.Material));
        if (by is null) findings.Add(new("by", "person.unknown", request.By));
        if (heat is null || material is null || by is null) return (null, findings);

        var observedAt = request.ObservedAt ?? clock.GetUtcNow();
        var outcome = await weighIn.Run(
            by,
            new(ScaleSender.KeyOf("weighing", station, request.Id), observedAt, heat.Id, material.Id, request.Load.NetKg, request.IntoBath)
            {
                Lot = request.Lot,
            },
            cancellation);
        if (!outcome.Succeeded) return (null, [.. outcome.Findings.Select(Placed)]);
        var weighing = await db.Weighings.AsNoTracking().SingleAsync(w => w.Id == outcome.Value, cancellation);
        return IsTheSame(weighing, heat.Id, material.Id, request) ? (weighing, []) : (null, [new("id", "scale.idTaken", request.Id)]);
    }

    private static bool IsTheSame(Weighing weighing, long heatId, long materialId, WeighingRequest request) =>
        weighing.HeatId == heatId && weighing.MaterialId == materialId && Math.Abs(weighing.Kg - request.Load.NetKg) < 1e-6
        && (weighing.Lot ?? "") == (request.Lot?.Trim() ?? "");

    /// <summary>The operation's fields have other names than the sender's.</summary>
    private static Finding Placed(Finding finding) => finding with
    {
        Path = finding.Path switch { "heatId" => "heat", "materialId" => "material", "kg" => "grossKg", "" => "by", _ => finding.Path },
    };
}
