using MeltShop.Records;
using Microsoft.Data.Sqlite;

namespace MeltShop.Web.Composition;

/// <summary>What an installation decides: where its data are, in which database, and whether it is a demo.</summary>
internal sealed record ShopSettings
{
    /// <summary>Holds the embedded database and all other data.</summary>
    public required string DataFolder { get; init; }

    public required RecordsOptions Records { get; init; }

    /// <summary>True only from the Development settings: people with known passwords must never be met in earnest.</summary>
    public required bool Demo { get; init; }

    /// <exception cref="SettingsException">A setting is missing or makes no sense; the message says which, and what to write.</exception>
    public static ShopSettings From(IConfiguration configuration)
    {
        var folder = FolderOf(configuration["MeltShop:DataFolder"]);
        return new()
        {
            DataFolder = folder,
            Records = RecordsOf(configuration, folder),
            Demo = configuration.GetValue("MeltShop:Demo", defaultValue: false),
        };
    }

    private static string FolderOf(string? setting)
    {
        if (!string.IsNullOrWhiteSpace(setting)) return Path.GetFullPath(setting);
        var local = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        return local.Length > 0
            ? Path.Combine(local, "MeltShop")
            : throw new SettingsException("This account has no folder for application data: set MeltShop:DataFolder (environment: MeltShop__DataFolder).");
    }

    private static RecordsOptions RecordsOf(IConfiguration configuration, string folder)
    {
        var owner = configuration["MeltShop:OwnerConnection"];
        // The command migrate needs no more than the owner's.
        var connection = configuration.GetConnectionString("MeltShop") ?? owner;
        return configuration["MeltShop:Database"]?.ToLowerInvariant() switch
        {
            null or "" or "sqlite" => new()
            {
                Provider = RecordsProvider.Sqlite,
                ConnectionString = new SqliteConnectionStringBuilder { DataSource = Path.Combine(folder, "meltshop.db") }.ToString(),
            },
            "postgres" => new()
            {
                Provider = RecordsProvider.Postgres,
                ConnectionString = !string.IsNullOrWhiteSpace(connection) ? connection
                    : throw new SettingsException("MeltShop:Database is postgres, so ConnectionStrings:MeltShop is needed (environment: ConnectionStrings__MeltShop)."),
                OwnerConnection = string.IsNullOrWhiteSpace(owner) ? null : owner,
            },
            var other => throw new SettingsException($"MeltShop:Database is '{other}'; it has to be sqlite or postgres."),
        };
    }
}
