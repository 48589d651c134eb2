using System.Text.Json;
using MeltShop.Records.Keeping;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Trail;

/// <summary>What was asked of the records and what came of it, entry by entry; read by its number, so that nothing is skipped or read twice.</summary>
public sealed class TrailPage(IDbContextFactory<RecordsContext> contexts)
{
    public const int PageSize = 50;

    /// <summary>As <see cref="RecordsJson"/> writes it. Inside a text its marks would have a stroke before them; no command holds a list of that name.</summary>
    private const string RowsBegin = ",\"rows\":[";

    /// <summary>Who may read it: who answers for the records, and who releases on their strength.</summary>
    public static IReadOnlyList<string> Roles { get; } = [Role.Supervisor, Role.Inspector, Role.Administrator];

    /// <summary>The entries before a number, the latest first; null: the latest of all.</summary>
    public async Task<TrailView> Before(long? number, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        var rows = db.TrailRows.AsNoTracking();
        if (number is { } before) rows = rows.Where(r => r.Number < before);
        return await Load(db, rows.OrderByDescending(r => r.Number).Take(PageSize + 1), PageSize, ct);
    }

    /// <summary>The entries after a number, in their order.</summary>
    public async Task<TrailView> After(long number, int most, CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        return await Load(db, Following(db, number, most), most, ct);
    }

    /// <summary>One more than asked for, to know whether there are more.</summary>
    internal static IQueryable<TrailRow> Following(RecordsContext db, long number, int most) =>
        db.TrailRows.AsNoTracking().Where(r => r.Number > number).OrderBy(r => r.Number).Take(most + 1);

    /// <summary>
    /// What was asked and what came of it, up to where the rows begin: the rows of an import may hold a million values, and stay in the database.
    /// </summary>
    internal static IQueryable<TrailRow> WithoutRows(IQueryable<TrailRow> rows) => rows.Select(r => new TrailRow
    {
        Number = r.Number,
        EntryKey = r.EntryKey,
        Operation = r.Operation,
        PersonId = r.PersonId,
        PersonName = r.PersonName,
        Station = r.Station,
        EnteredAt = r.EnteredAt,
#pragma warning disable CA1845 // translated to SQL, which knows no span
        Payload = r.Payload.Contains(RowsBegin) ? r.Payload.Substring(0, r.Payload.IndexOf(RowsBegin)) + "}" : r.Payload,
#pragma warning restore CA1845
        PreviousHash = r.PreviousHash,
        Hash = r.Hash,
    });

    private static async Task<TrailView> Load(RecordsContext db, IQueryable<TrailRow> rows, int most, CancellationToken ct)
    {
        var found = await WithoutRows(rows).ToListAsync(ct);
        return new([.. found.Take(most).Select(Of)], found.Count > most);
    }

    private static TrailEntry Of(TrailRow row)
    {
        using var payload = JsonDocument.Parse(row.Payload);
        return new(
            row.Number, row.Operation, row.PersonName, row.Station, row.EnteredAt, payload.RootElement.GetProperty("asked").Clone(),
            payload.RootElement.GetProperty("result").Clone(), row.Hash);
    }
}
