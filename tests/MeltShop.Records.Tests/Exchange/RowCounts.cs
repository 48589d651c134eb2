using MeltShop.Records.Exchange;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Exchange;

/// <summary>How many rows each table has.</summary>
internal static class RowCounts
{
    public static async Task<SortedDictionary<string, long>> Of(IDbContextFactory<RecordsContext> contexts)
    {
        await using var db = await contexts.CreateDbContextAsync(TestContext.Current.CancellationToken);
        var counts = new SortedDictionary<string, long>(StringComparer.Ordinal);
        foreach (var table in StoredTables.Of(db)) counts[table.Name] = await StoredRows.Count(db, table.Name, TestContext.Current.CancellationToken);
        Assert.True(counts.Count > 20);
        return counts;
    }
}
