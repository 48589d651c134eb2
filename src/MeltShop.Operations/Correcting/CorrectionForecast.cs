using MeltShop.Operations.Heats;
using MeltShop.Records;
using MeltShop.Records.Reading.Heats;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Correcting;

/// <summary>What page and operation reckon a correction from.</summary>
public sealed class CorrectionForecast(IDbContextFactory<RecordsContext> contexts, CorrectionPage page)
{
    /// <summary>Null where the heat is unknown or no bath sample counts.</summary>
    public async Task<CorrectionFacts?> Facts(long heatId, CancellationToken ct)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var heat = await db.Heats.AsNoTracking().SingleOrDefaultAsync(h => h.Id == heatId, ct);
        return heat is not null && await BathNow.Load(db, heat, ct) is { } bath && await page.Load(heatId, ct) is { } view
            ? new CorrectionFacts(view, bath)
            : null;
    }
}
