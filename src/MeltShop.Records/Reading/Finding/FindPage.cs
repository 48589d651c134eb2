using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.History;
using MeltShop.Records.Reading.Laboratory;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Finding;

/// <summary>
/// Looks for words in what people call things by: numbers, codes and names, a part of which is enough. A heat is found by a beginning of its number or of the
/// last part of it, a coin and a lot by all of what they are called: there are so many of them that only an index finds one among them.
/// </summary>
public sealed class FindPage(IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>Rows of each kind that are shown; the page says when there are more.</summary>
    public const int Most = 20;

    /// <param name="words">What was typed, whatever its case; blank finds nothing.</param>
    /// <param name="people">Whether who asks may see the people of the shop.</param>
    /// <param name="ct">Stops the reading.</param>
    public async Task<FoundView> Load(string? words, bool people = false, CancellationToken ct = default)
    {
        if (words?.Trim() is not { Length: > 0 } text) return new([], false);
        await using var db = await contexts.CreateDbContextAsync(ct);
#pragma warning disable CA1304, CA1311, CA1862 // translated to SQL
        var upper = text.ToUpperInvariant();
        var heats = await (await HistoryQuery.Of(db, new(Number: text), null, ct)).Take(Most + 1)
            .Select(h => new Found(FoundKind.Heat, h.Id, h.Number, db.Grades.Single(g => g.Id == h.GradeId).Code)).ToListAsync(ct);
        var orders = await db.CastingOrders.Where(o => o.Number.ToUpper().Contains(upper) || o.Casting.ToUpper().Contains(upper)).OrderByDescending(o => o.DueOn).ThenBy(o => o.Number)
            .Take(Most + 1).Select(o => new Found(FoundKind.Order, o.Id, o.Number, o.Casting)).ToListAsync(ct);
        var furnaces = await db.Furnaces.Where(f => f.Code.ToUpper().Contains(upper) || f.Name.ToUpper().Contains(upper)).OrderBy(f => f.Code).Take(Most + 1)
            .Select(f => new Found(FoundKind.Furnace, f.Id, f.Code, f.Name)).ToListAsync(ct);
        var ladles = await db.Ladles.Where(l => l.Code.ToUpper().Contains(upper) || l.Name.ToUpper().Contains(upper)).OrderBy(l => l.Code).Take(Most + 1)
            .Select(l => new Found(FoundKind.Ladle, l.Id, l.Code, l.Name)).ToListAsync(ct);
        var instruments = await db.Instruments.Where(i => i.Code.ToUpper().Contains(upper) || i.Name.ToUpper().Contains(upper)).OrderBy(i => i.Code).Take(Most + 1)
            .Select(i => new Found(FoundKind.Instrument, i.Id, i.Code, i.Name)).ToListAsync(ct);
        var persons = !people ? [] : await db.Users.Where(p => p.UserName!.ToUpper().Contains(upper) || p.DisplayName.ToUpper().Contains(upper)).OrderBy(p => p.DisplayName)
            .Take(Most + 1).Select(p => new Found(FoundKind.Person, p.Id, p.UserName!, p.DisplayName)).ToListAsync(ct);
        var materials = await db.Materials.Where(m => m.Code.ToUpper().Contains(upper) || m.Name.ToUpper().Contains(upper)).OrderBy(m => m.Code).Take(Most + 1)
            .Select(m => new Found(FoundKind.Material, m.Id, m.Code, m.Name)).ToListAsync(ct);
        var grades = await db.Grades.Where(g => g.Code.ToUpper().Contains(upper)).OrderBy(g => g.Code).Take(Most + 1)
            .Select(g => new Found(FoundKind.Grade, g.Id, g.Code, "")).ToListAsync(ct);
#pragma warning restore CA1304, CA1311, CA1862
        List<Found>[] byTime = [heats, await Coins(db, text).Take(Most + 1).ToListAsync(ct), orders];
        List<Found>[] byCode = [furnaces, ladles, instruments, materials, await Lots(db, text).Take(Most + 1).ToListAsync(ct), grades];
        return new(
            [.. byTime.SelectMany(rows => rows.Take(Most)), .. byCode.SelectMany(rows => rows.Take(Most).InNaturalOrder(found => found.Code)), .. persons.Take(Most)],
            byTime.Concat(byCode).Append(persons).Any(rows => rows.Count > Most));
    }

    /// <summary>The coins of a number, with their result or on their way, the latest first. As it was typed, or in capitals or small letters: each is one look into the index.</summary>
    internal static IQueryable<Found> Coins(RecordsContext db, string text)
    {
        var (upper, lower) = (text.ToUpperInvariant(), text.ToLowerInvariant());
        var sent = CoinRows.Waiting(db).Where(c => c.CoinNumber == text || c.CoinNumber == upper || c.CoinNumber == lower).Select(c => new { c.HeatId, Number = c.CoinNumber, c.ObservedAt });
        var known = db.InForce<Sample>().Where(s => s.CoinNumber == text || s.CoinNumber == upper || s.CoinNumber == lower).Select(s => new { s.HeatId, Number = s.CoinNumber!, s.ObservedAt });
        return sent.Concat(known).OrderByDescending(c => c.ObservedAt).Select(c => new Found(FoundKind.Coin, c.HeatId, c.Number, db.Heats.Single(h => h.Id == c.HeatId).Number));
    }

    /// <summary>The materials that a lot of this name was booked for.</summary>
    internal static IQueryable<Found> Lots(RecordsContext db, string text)
    {
        var (upper, lower) = (text.ToUpperInvariant(), text.ToLowerInvariant());
        return db.StockFacts.Where(s => s.Lot == text || s.Lot == upper || s.Lot == lower).Select(s => new { s.MaterialId, Lot = s.Lot! }).Distinct()
            .OrderBy(s => s.Lot).ThenBy(s => s.MaterialId).Select(s => new Found(FoundKind.Lot, s.MaterialId, s.Lot, db.Materials.Single(m => m.Id == s.MaterialId).Name));
    }
}
