using System.Text.Json;
using MeltShop.Records.Keeping;
using MeltShop.Records.People;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Trail;

/// <summary>What was asked of the records and what came of it, entry by entry; read by its number, so that nothing is skipped or read twice.</summary>
public sealed class TrailPage(IDbContextFactory<RecordsContext> contexts)
{
    public const int PageSize = 50;

    /// <summary>Who may read it: who answers for the records, and who releases on their strength.</summary>
    public static IReadOnlyList<string> Roles { get; } = [Role.Supervisor, Role.Inspector, Role.Administrator];

    /// <summary>The entries before a number, the latest first; null: the latest of all.</summary>
    public async Task<TrailView> Before(long? number, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var rows = db.TrailRows.AsNoTracking();
        if (number is { } before) rows = rows.Where(r => r.Number < before);
        var found = await rows.OrderByDescending(r => r.Number).Take(PageSize + 1).ToListAsync(ct);
        return new([.. found.Take(PageSize).Select(Of)], found.Count > PageSize);
    }

    /// <summary>The entries after a number, in their order.</summary>
    public async Task<TrailView> After(long number, int most, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var found = await Following(db, number, most).ToListAsync(ct);
        return new([.. found.Take(most).Select(Of)], found.Count > most);
    }

    /// <summary>One more than asked for, to know whether there are more.</summary>
    internal static IQueryable<TrailRow> Following(RecordsContext db, long number, int most) =>
        db.TrailRows.AsNoTracking().Where(r => r.Number > number).OrderBy(r => r.Number).Take(most + 1);

    private static TrailEntry Of(TrailRow row)
    {
        using var payload = JsonDocument.Parse(row.Payload);
        return new(
            row.Number, row.Operation, row.PersonName, row.Station, row.EnteredAt, payload.RootElement.GetProperty("asked").Clone(),
            payload.RootElement.GetProperty("result").Clone(), row.Hash);
    }
}
