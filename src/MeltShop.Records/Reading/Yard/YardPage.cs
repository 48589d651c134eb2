using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Yard;

/// <param name="Kind">Only this kind, or null for all.</param>
/// <param name="Text">Part of the code or name, whatever its case (of the letters A to Z on SQLite); null or blank for all.</param>
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
            which = which.Where(m => m.Code.ToUpper().Contains(upper) || m.Name.ToUpper().Contains(upper));
#pragma warning restore CA1304, CA1311, CA1862
        }

        var rows = await MaterialRows.Load(db, which.OrderBy(m => m.Code).Take(Most + 1), ct);
        var currency = await db.Sites.Select(s => s.Currency).FirstOrDefaultAsync(ct);
        return new(await db.WithLots([.. rows.Take(Most)], ct), currency, rows.Count > Most);
    }

    /// <summary>One material, or null.</summary>
    public async Task<MaterialView?> Material(long id, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        return (await db.WithLots(await MaterialRows.Load(db, db.Materials.Where(m => m.Id == id), ct), ct)).SingleOrDefault();
    }
}
