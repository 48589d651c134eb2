using MeltShop.Records.Reading.History;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Finding;

/// <summary>Looks for words in what people call things by: numbers of heats and orders, castings, codes and names of materials, codes of grades, furnaces.</summary>
public sealed class FindPage(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>Rows of each kind that are shown; the page says when there are more.</summary>
    public const int Most = 20;

    /// <param name="words">What was typed, whatever its case; blank finds nothing.</param>
    /// <param name="ct">Stops the reading.</param>
    public async Task<FoundView> Load(string? words, CancellationToken ct = default)
    {
        if (words?.Trim() is not { Length: > 0 } text) return new([], false);
        await using var db = await contexts.CreateDbContextAsync(ct);
#pragma warning disable CA1304, CA1311, CA1862 // translated to SQL
        var upper = text.ToUpperInvariant();
        var heats = await HistoryQuery.Of(db, new(Number: text), null).Take(Most + 1)
            .Select(h => new Found(FoundKind.Heat, h.Id, h.Number, db.Grades.Single(g => g.Id == h.GradeId).Code)).ToListAsync(ct);
        var orders = await db.CastingOrders.Where(o => o.Number.ToUpper().Contains(upper) || o.Casting.ToUpper().Contains(upper)).OrderByDescending(o => o.DueOn).ThenBy(o => o.Number)
            .Take(Most + 1).Select(o => new Found(FoundKind.Order, o.Id, o.Number, o.Casting)).ToListAsync(ct);
        var furnaces = await db.Furnaces.Where(f => f.Code.ToUpper().Contains(upper) || f.Name.ToUpper().Contains(upper)).OrderBy(f => f.Code).Take(Most + 1)
            .Select(f => new Found(FoundKind.Furnace, f.Id, f.Code, f.Name)).ToListAsync(ct);
        var materials = await db.Materials.Where(m => m.Code.ToUpper().Contains(upper) || m.Name.ToUpper().Contains(upper)).OrderBy(m => m.Code).Take(Most + 1)
            .Select(m => new Found(FoundKind.Material, m.Id, m.Code, m.Name)).ToListAsync(ct);
        var grades = await db.Grades.Where(g => g.Code.ToUpper().Contains(upper)).OrderBy(g => g.Code).Take(Most + 1)
            .Select(g => new Found(FoundKind.Grade, g.Id, g.Code, "")).ToListAsync(ct);
#pragma warning restore CA1304, CA1311, CA1862
        List<Found>[] kinds = [heats, orders, furnaces, materials, grades];
        return new([.. kinds.SelectMany(rows => rows.Take(Most))], kinds.Any(rows => rows.Count > Most));
    }
}
