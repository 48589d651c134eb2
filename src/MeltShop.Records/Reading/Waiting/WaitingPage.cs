using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Waiting;

/// <summary>What waits for whom: of the heats in the furnaces, and of the ladles whose castings nobody has let go.</summary>
public sealed class WaitingPage(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>Ladles that are looked at, the latest first.</summary>
    public const int MostLadles = 50;

    /// <summary>Everything that waits, whoever it waits for; what has waited longest first.</summary>
    public async Task<IReadOnlyList<WaitingRow>> Load(CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var heats = await OpenHeat.Load(db, ct);
        var ladles = await OpenLadle.Load(db, MostLadles, ct);
        return [.. heats.Select(h => h.Waiting).OfType<WaitingRow>().Concat(ladles.Select(l => l.Waiting).OfType<WaitingRow>()).OrderBy(row => row.Since)];
    }
}
