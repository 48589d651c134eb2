using System.Security.Cryptography;
using System.Text;
using MeltShop.Metallurgy;
using MeltShop.Operations;
using MeltShop.Operations.Heats;
using MeltShop.Records;
using MeltShop.Records.Heats;
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
        var by = await Person(db, station, request.By, cancellation);
        if (heat is null) findings.Add(new("heat", "heat.unknown", request.Heat));
        if (material is null) findings.Add(new("material", "material.unknown", request.Material));
        if (by is null) findings.Add(new("by", "person.unknown", request.By));
        if (heat is null || material is null || by is null) return (null, findings);

        var outcome = await weighIn.Run(
            by,
            new(KeyOf(station, request.Id), request.ObservedAt ?? clock.GetUtcNow(), heat.Id, material.Id, request.NetKg, request.IntoBath ?? heat.State is not HeatState.Charging),
            cancellation);
        if (!outcome.Succeeded) return (null, [.. outcome.Findings.Select(Placed)]);
        var weighing = await db.Weighings.AsNoTracking().SingleAsync(w => w.Id == outcome.Value, cancellation);
        return IsTheSame(weighing, heat.Id, material.Id, request) ? (weighing, []) : (null, [new("id", "scale.idTaken", request.Id)]);
    }

    /// <summary>The same name from the same sender is the same entry, for ever.</summary>
    private static Guid KeyOf(string station, string id) => new(SHA256.HashData(Encoding.UTF8.GetBytes($"weighing\n{station}\n{id}")).AsSpan(0, 16));

    private static bool IsTheSame(Weighing weighing, long heatId, long materialId, WeighingRequest request) =>
        weighing.HeatId == heatId && weighing.MaterialId == materialId && Math.Abs(weighing.Kg - request.NetKg) < 1e-6;

    /// <summary>The operation's fields have other names than the sender's.</summary>
    private static Finding Placed(Finding finding) => finding with
    {
        Path = finding.Path switch { "heatId" => "heat", "materialId" => "material", "kg" => "grossKg", "" => "by", _ => finding.Path },
    };

    private static async Task<Acting?> Person(RecordsContext db, string station, string name, CancellationToken cancellation)
    {
#pragma warning disable CA1304, CA1311 // as sign-in keeps names
        var upper = name.ToUpperInvariant();
#pragma warning restore CA1304, CA1311
        var person = await db.Users.AsNoTracking().SingleOrDefaultAsync(p => p.NormalizedUserName == upper && p.IsActive, cancellation);
        if (person is null) return null;
        var roles = await (
            from held in db.UserRoles
            join role in db.Roles on held.RoleId equals role.Id
            where held.UserId == person.Id
            select role.Name!).ToListAsync(cancellation);
        return new Acting(person.Id, person.DisplayName, station, roles);
    }
}
