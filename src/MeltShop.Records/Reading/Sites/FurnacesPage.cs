using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Sites;

/// <summary>The furnaces of the shop with their figures, those out of use as well.</summary>
public sealed class FurnacesPage(IDbContextFactory<RecordsContext> contexts)
{
    public async Task<FurnacesView> Load(CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        return new((await db.Furnaces.AsNoTracking()
            .Select(f => new FurnaceFigures(f.Id, f.Version, f.Code, f.Name, f.CapacityKg, f.PowerKw, f.HighestC, f.IsActive)).ToListAsync(ct)).InNaturalOrder(f => f.Code));
    }
}

public sealed record FurnacesView(IReadOnlyList<FurnaceFigures> Furnaces);

/// <param name="CapacityKg">Liquid iron when full.</param>
/// <param name="PowerKw">Rated power.</param>
/// <param name="HighestC">Highest bath temperature that lining and maker allow; null where nobody has said.</param>
public sealed record FurnaceFigures(long Id, Guid Version, string Code, string Name, double CapacityKg, double PowerKw, double? HighestC, bool IsActive);
