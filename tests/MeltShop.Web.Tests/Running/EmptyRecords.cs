using MeltShop.Records;

namespace MeltShop.Web.Tests.Running;

/// <summary>A migrated file of records without a row. It is made once: migrating takes longer than most tests do.</summary>
internal static class EmptyRecords
{
    private static readonly Lazy<Task<byte[]>> Made = new(Make);

    public static Task<byte[]> Bytes => Made.Value;

    private static async Task<byte[]> Make()
    {
        var folder = Directory.CreateTempSubdirectory("meltshop-template-");
        var file = Path.Combine(folder.FullName, "template.db");
        await RecordsDatabase.MigrateAsync(new() { Provider = RecordsProvider.Sqlite, ConnectionString = $"Data Source={file};Pooling=False" });
        var bytes = await File.ReadAllBytesAsync(file); // the last connection is closed: nothing is left in the log beside it
        folder.Delete(recursive: true);
        return bytes;
    }
}
