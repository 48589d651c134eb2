using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.History;

/// <summary>What the history can be filtered by: grades and furnaces, those out of use included, since old heats name them.</summary>
public sealed class HistoryChoices(IDbContextFactory<RecordsContext> contexts)
{
    public async Task<HistoryChoicesView> Load(CancellationToken ct = default)
    {
        await using var db = await contexts.CreateDbContextAsync(ct);
        return new(
            (await db.Grades.Select(g => new NamedRow(g.Id, g.Code)).ToListAsync(ct)).InNaturalOrder(g => g.Name),
            (await db.Furnaces.Select(f => new NamedRow(f.Id, f.Name)).ToListAsync(ct)).InNaturalOrder(f => f.Name));
    }
}

public sealed record HistoryChoicesView(IReadOnlyList<NamedRow> Grades, IReadOnlyList<NamedRow> Furnaces);

public sealed record NamedRow(long Id, string Name);
