namespace MeltShop.Records.Exchange;

/// <summary>The name of a migration without the time before it, which may differ between the two databases.</summary>
internal static class MigrationName
{
    public static string Of(string migration) => migration[(migration.IndexOf('_', StringComparison.Ordinal) + 1)..];
}
