using MeltShop.Records;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Composition;

/// <summary>Brings the database to the schema of this program: at every start on SQLite and in the demo, elsewhere by the command <c>migrate</c>.</summary>
internal sealed class DatabasePreparation(ShopSettings settings, IDbContextFactory<RecordsContext> contexts)
{
    /// <summary>What a start does: migrate where it may, otherwise refuse to run on an older schema.</summary>
    /// <exception cref="SettingsException">The database has to be migrated first.</exception>
    public async Task PrepareAsync(CancellationToken cancellation)
    {
        MakeFolder();
        await using var context = await contexts.CreateDbContextAsync(cancellation);
        if (settings.Records.Provider == RecordsProvider.Sqlite || settings.Demo)
            await RecordsDatabase.MigrateAsync(settings.Records, cancellation);
        else if ((await context.Database.GetPendingMigrationsAsync(cancellation)).Any())
            throw new SettingsException("The database has an older schema than this program: run the command migrate first.");
    }

    /// <summary>Applies what is missing, under the owner's connection where there is one.</summary>
    public Task MigrateAsync(CancellationToken cancellation)
    {
        MakeFolder();
        return RecordsDatabase.MigrateAsync(settings.Records, cancellation);
    }

    /// <summary>What is in the folder is for this account alone: hashes of passwords, and the keys that protect cookies.</summary>
    public void MakeFolder()
    {
        if (OperatingSystem.IsWindows())
            Directory.CreateDirectory(settings.DataFolder);
        else
            Directory.CreateDirectory(settings.DataFolder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }
}
