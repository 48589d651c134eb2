using MeltShop.Metallurgy;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Shops;

public sealed partial class Shop
{
    /// <summary>The operation refuses at that field for that reason, and no table has a row more or less than before.</summary>
    public async Task<IReadOnlyList<Finding>> Refuses<TCommand, TResult>(
        Operation<TCommand, TResult> operation, Acting who, TCommand command, string path, string code)
        where TCommand : Command
    {
        var before = await Rows();
        var outcome = await Do(operation, who, command);

        Assert.Contains((path, code), outcome.Findings.Select(f => (f.Path, f.Code)));
        Assert.Equal(before, await Rows());
        return outcome.Findings;
    }

    /// <summary>Rows of every table.</summary>
    public async Task<SortedDictionary<string, int>> Rows()
    {
        await using var db = Db();
        var rows = new SortedDictionary<string, int>();
        foreach (var table in db.Model.GetEntityTypes().Select(t => t.GetTableName()!).Distinct())
        {
            var sql = "SELECT CAST(COUNT(*) AS INTEGER) AS \"Value\" FROM \"" + table + "\""; // our own model's names
            var count = await db.Database.SqlQueryRaw<int>(sql).ToListAsync();
            rows[table] = count.Single();
        }

        return rows;
    }

    /// <summary>Returns as soon as so many connections to this database wait for a lock.</summary>
    public async Task Waiting(int many)
    {
        await using var db = Db();
        var began = TimeProvider.System.GetTimestamp();
        while (TimeProvider.System.GetElapsedTime(began) < TimeSpan.FromMinutes(5))
        {
            var waiting = await db.Database.SqlQuery<int>(
                $"""SELECT COUNT(*)::int AS "Value" FROM pg_stat_activity WHERE datname = current_database() AND wait_event_type = 'Lock'""").ToListAsync(TestContext.Current.CancellationToken);
            if (waiting[0] >= many) return;
            await Task.Delay(20, TestContext.Current.CancellationToken);
        }

        Assert.Fail($"Not {many} connections came to wait.");
    }
}
