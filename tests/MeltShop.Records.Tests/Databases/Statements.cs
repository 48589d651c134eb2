#pragma warning disable EF1002, EF1003 // the tests' own statements, put together from names of the model
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Databases;

/// <summary>Statements as somebody at the database's own prompt would send them.</summary>
public static class Statements
{
    public static Task<int> Send(this RecordsContext db, string statement, params object[] values) =>
        db.Database.ExecuteSqlRawAsync(statement, values, TestContext.Current.CancellationToken);

    /// <summary>The first value of the first row; the statement calls it Value.</summary>
    public static async Task<T> Ask<T>(this RecordsContext db, string statement) => (await db.AskAll<T>(statement))[0];

    /// <summary>The first value of each row; the statement calls it Value.</summary>
    public static Task<List<T>> AskAll<T>(this RecordsContext db, string statement) =>
        db.Database.SqlQueryRaw<T>(statement).ToListAsync(TestContext.Current.CancellationToken);
}
