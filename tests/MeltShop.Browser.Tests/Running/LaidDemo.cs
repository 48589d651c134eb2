using Microsoft.Data.Sqlite;

namespace MeltShop.Browser.Tests.Running;

/// <summary>
/// The demo foundry as a program lays it into an empty data folder. That takes some seconds of work, so the first program of a run does it,
/// and each later one begins with a copy of what that one had laid before anybody touched it.
/// </summary>
internal static class LaidDemo
{
    private const string Records = "meltshop.db";
    private static readonly SemaphoreSlim One = new(1);
    private static string? laid;

    /// <summary>Starts a program on an empty data folder.</summary>
    public static async Task StartAsync(string dataFolder, Func<Task> start)
    {
        await One.WaitAsync();
        try
        {
            if (laid is null)
            {
                await start();
                laid = await CopyAsync(dataFolder, Directory.CreateTempSubdirectory("meltshop-laid-").FullName);
                AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(laid, recursive: true);
                return;
            }

            await CopyAsync(laid, dataFolder);
        }
        finally
        {
            One.Release();
        }

        await start();
    }

    /// <summary>The records while they may be in use, and what lies beside them.</summary>
    private static async Task<string> CopyAsync(string from, string to)
    {
        await using var connection = new SqliteConnection($"Data Source={Path.Combine(from, Records)};Mode=ReadOnly;Pooling=False");
        await connection.OpenAsync();
        await using var copy = connection.CreateCommand();
        copy.CommandText = "VACUUM INTO $to";
        copy.Parameters.AddWithValue("$to", Path.Combine(to, Records));
        await copy.ExecuteNonQueryAsync();
        foreach (var file in Directory.EnumerateFiles(from).Where(file => !Path.GetFileName(file).StartsWith(Records, StringComparison.Ordinal)))
            File.Copy(file, Path.Combine(to, Path.GetFileName(file)));
        return to;
    }
}
