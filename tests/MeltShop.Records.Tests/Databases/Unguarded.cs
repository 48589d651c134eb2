using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Tests.Databases;

internal static class Unguarded
{
    /// <summary>Takes every trigger off, and lets references point nowhere, as somebody can who owns the database.</summary>
    public static async Task Unguard(this RecordsContext db)
    {
        await db.Database.OpenConnectionAsync(TestContext.Current.CancellationToken);
        if (!db.Database.IsSqlite())
        {
            await db.Send("SET session_replication_role = replica");
            return;
        }

        foreach (var trigger in await db.AskAll<string>("""SELECT name AS "Value" FROM sqlite_master WHERE type = 'trigger'""")) await db.Send($"DROP TRIGGER \"{trigger}\"");
        await db.Send("PRAGMA foreign_keys=OFF");
    }
}
