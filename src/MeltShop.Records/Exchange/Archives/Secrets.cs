using MeltShop.Records.People;

namespace MeltShop.Records.Exchange.Archives;

/// <summary>What an export leaves out, since it is made to be passed on: whatever lets somebody in.</summary>
internal static class Secrets
{
    private static readonly HashSet<string> Tables = ["ApiKeys", "DataProtectionKeys", "PersonTokens", "PersonLogins"];

    private static readonly HashSet<string> Columns = [nameof(Person.PasswordHash), nameof(Person.SecurityStamp)];

    public static IReadOnlyList<StoredTable> Without(IEnumerable<StoredTable> tables) =>
    [
        .. tables.Where(t => !Tables.Contains(t.Name)).Select(t => t.Name == "People" ? t with { Columns = [.. t.Columns.Where(c => !Columns.Contains(c.Name))] } : t),
    ];
}
