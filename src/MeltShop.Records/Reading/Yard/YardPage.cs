using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Yard;

/// <param name="Kind">Only this kind, or null for all.</param>
/// <param name="Text">Part of the code or name, whatever its case (of the letters A to Z on SQLite), or the bin in which some of it lies; null or blank for all.</param>
/// <param name="WithInactive">Also those that are no longer used.</param>
public sealed record YardFilter(MaterialKind? Kind = null, string? Text = null, bool WithInactive = false);

/// <param name="Currency">ISO 4217 code; null before the site is set up.</param>
/// <param name="More">True where there are more than are shown.</param>
public sealed record YardView(IReadOnlyList<MaterialView> Materials, string? Currency, bool More);

/// <summary>What lies in the yard.</summary>
public sealed class YardPage(IDbContextFactory<RecordsContext> contexts)
{
    public const int Most = 500;

    public async Task<YardView> Load(YardFilter? filter = null, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var which = db.Materials.Where(m => m.IsActive);
        if (filter?.WithInactive == true) which = db.Materials;
        if (filter?.Kind is { } kind) which = which.Where(m => m.Kind == kind);
        if (filter?.Text?.Trim() is { Length: > 0 } text)
        {
#pragma warning disable CA1304, CA1311, CA1862 // translated to SQL, which has its own idea of upper case
            var upper = text.ToUpperInvariant();
            var lying = await InBin(db, text, ct);
            which = which.Where(m => m.Code.ToUpper().Contains(upper) || m.Name.ToUpper().Contains(upper) || lying.Contains(m.Id));
#pragma warning restore CA1304, CA1311, CA1862
        }

        var rows = await MaterialRows.Load(db, which.OrderBy(m => m.Code).Take(Most + 1), ct);
        var currency = await db.Sites.Select(s => s.Currency).FirstOrDefaultAsync(ct);
        return new(await db.WithLots(rows.Take(Most).InNaturalOrder(m => m.Code), ct), currency, rows.Count > Most);
    }

    /// <summary>All that is in use with its lots, in the order of their codes: what to choose from, and what plans are reckoned with.</summary>
    public async Task<IReadOnlyList<MaterialView>> All(CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        return await db.WithLots(await MaterialRows.Load(db, db.Materials.Where(m => m.IsActive).OrderBy(m => m.Code), ct), ct);
    }

    /// <summary>The bins in which something was said to lie, by name.</summary>
    public async Task<IReadOnlyList<string>> Bins(CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var bins = await db.LotPlaces.Where(p => p.Bin != null).Select(p => p.Bin!).Distinct().ToListAsync(ct);
        return bins.Distinct(StringComparer.OrdinalIgnoreCase).InNaturalOrder(bin => bin);
    }

    /// <summary>One material, or null.</summary>
    public async Task<MaterialView?> Material(long id, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        return (await db.WithLots(await MaterialRows.Load(db, db.Materials.Where(m => m.Id == id), ct), ct)).SingleOrDefault();
    }

    /// <summary>Materials of which a lot was last said to lie in a bin; whether some of it is left is for whoever reads its lots.</summary>
    private static async Task<List<long>> InBin(RecordsContext db, string bin, CancellationToken ct)
    {
#pragma warning disable CA1304, CA1311, CA1862 // translated to SQL
        var upper = bin.ToUpperInvariant();
        var ids = await db.LotPlaces.Where(p => p.Bin != null && p.Bin.ToUpper() == upper).Select(p => p.MaterialId).Distinct().ToListAsync(ct);
#pragma warning restore CA1304, CA1311, CA1862
        return ids.Count == 0 ? ids : [.. (await db.Places(ids, ct)).Where(places => places.Any(p => string.Equals(p.Bin, bin, StringComparison.OrdinalIgnoreCase))).Select(places => places.Key)];
    }
}
