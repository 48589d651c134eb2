using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>What the page of instruments shows: all of them, those out of use too.</summary>
public sealed class InstrumentsPage(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>In the order of their codes.</summary>
    public async Task<IReadOnlyList<InstrumentView>> Load(CancellationToken ct)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        return await InstrumentRows.Load(db.Instruments, ct);
    }
}
