using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Yard;

/// <summary>What the ledger says of a lot.</summary>
/// <param name="Name">As it stands on the bag.</param>
/// <param name="LeftKg">What lies there by the ledger, kg; below zero where a delivery or a count is missing.</param>
/// <param name="SinceAt">Its first line.</param>
public sealed record LotView(string Name, double LeftKg, DateTimeOffset SinceAt)
{
    /// <summary>Under this a lot is used up, kg: scales of a yard show no less.</summary>
    private const double Nothing = 0.01;

    /// <summary>The bin in which it lies, as the shop calls it; null where nobody said.</summary>
    public string? Bin { get; init; }

    public bool IsThere => LeftKg >= Nothing;
}

/// <summary>Reads the lots of materials with their bins: two queries, however many there are; the oldest first, as a yard uses them.</summary>
internal static class LotRows
{
    public static async Task<IReadOnlyList<MaterialView>> WithLots(this RecordsContext db, IReadOnlyList<MaterialView> materials, CancellationToken ct)
    {
        var ids = materials.Select(m => m.Id).ToList();
        var rows = await db.InForce<StockFact>().Where(s => s.Lot != null && ids.Contains(s.MaterialId))
            .GroupBy(s => new { s.MaterialId, s.Lot })
            .Select(g => new { g.Key.MaterialId, g.Key.Lot, LeftKg = g.Sum(s => s.Kg), SinceAt = g.Min(s => s.ObservedAt) }).ToListAsync(ct);
        var lots = rows.OrderBy(r => r.SinceAt).ThenBy(r => r.Lot, NaturalOrder.Names).ToLookup(r => r.MaterialId);
        var places = await db.Places(ids, ct);
        return
        [
            .. materials.Select(m => m with
            {
                Lots = [.. lots[m.Id].Select(r => new LotView(r.Lot!, r.LeftKg, r.SinceAt) { Bin = Bin(m.Id, r.Lot) })],
                PileBin = Bin(m.Id, null),
            }),
        ];

        string? Bin(long materialId, string? lot) => places[materialId].FirstOrDefault(place => place.Lot == lot)?.Bin;
    }
}
