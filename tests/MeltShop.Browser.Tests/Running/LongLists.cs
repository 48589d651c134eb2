namespace MeltShop.Browser.Tests.Running;

/// <summary>A demo foundry that has grown old and large: every list of its pages is long. Rows are copies of the first one of their table.</summary>
internal static class LongLists
{
    /// <summary>Every heat and order that a page shows at once, and more of them.</summary>
    private const int Many = 600;

    /// <summary>More than a screen holds, and than a choice is looked through for.</summary>
    private const int Long = 70;

    /// <summary>What of a copy is not as in the first row; n counts the copies.</summary>
    private static readonly (string Table, int Rows, (string Column, string Value)[] Own)[] Tables =
    [
        ("Heats", Many, [("Number", Text("OTF-2025-"))]), ("CastingOrders", Many, [("Number", Text("1040-"))]), ("Materials", Long, [("Code", Text("m-"))]),
        ("Grades", Long, [("Code", Text("G-"))]), ("Ladles", Long, [("Code", Text("ladle-"))]), ("Furnaces", Long / 2, [("Code", Text("furnace-")), ("Name", Text("Furnace "))]),
        ("People", Long, [("UserName", Text("person-")), ("NormalizedUserName", Text("PERSON-"))]), ("Instruments", Long, [("Code", Text("spark-"))]),
        ("ReferenceMaterials", Long, [("Code", Text("block-"))]), ("ControlSamples", Long, []), ("Temperatures", Long, []), ("PouredMoulds", Long, [("Label", Text("m "))]),
        ("TestPieces", Long, [("Label", Text("P "))]), ("StockFacts", Long, [("Lot", Text("lot "))]), ("TreatedLadles", Long, [("Ordinal", "10 + n"), ("State", "'Held'")]),
        ("Taps", Long, [("TreatedLadleId", "(SELECT MAX(\"Id\") FROM \"TreatedLadles\" WHERE \"Ordinal\" = 10 + n)")]),
    ];

    /// <summary>Pages whose list is long once something is asked for.</summary>
    public static IReadOnlyDictionary<string, string> Asked { get; } = new Dictionary<string, string>
    {
        ["/find"] = "/find?words=OTF-2025", ["/orders"] = "/orders?show=closed", ["/recall"] = "/recall?from=Heat&of=OTF-2026-0001", ["/laboratory/trends"] = "/laboratory/trends?grade=3&furnace=1",
        ["/ladles/1/castings"] = "/ladles/3/castings",
    };

    /// <summary>Pages of which a part is shown, by what says so.</summary>
    public static IReadOnlyDictionary<string, string> Cut { get; } = new Dictionary<string, string>
    {
        ["/"] = ".more", ["/find"] = "[data-testid=more]", ["/orders"] = "[data-testid=more]", ["/history"] = "[data-testid=older]", ["/import"] = "[data-testid=more]", ["/trail"] = "[data-testid=older]",
    };

    public static async Task WriteAsync(ShopDatabase database)
    {
        foreach (var (table, rows, own) in Tables) await database.WriteAsync(await MoreAsync(database, table, $"generate_series(1, {rows}) n", own));
        await database.WriteAsync(await MoreAsync(
            database, "Samples", $"(SELECT \"Id\" AS heat FROM \"Heats\" WHERE \"Number\" LIKE 'OTF-2025-%' ORDER BY \"Id\" LIMIT {Long}) n", [("HeatId", "heat"), ("TreatedLadleId", "NULL")]));
        await database.WriteAsync("""
            INSERT INTO "SampleMeans" ("SampleId", "Element", "Percent", "Count")
            SELECT s."Id", m."Element", m."Percent" * (1 + (s."Id" % 7) * 0.002), m."Count" FROM "Samples" s JOIN "Heats" h ON h."Id" = s."HeatId" AND h."Number" LIKE 'OTF-2025-%'
            CROSS JOIN (SELECT * FROM "SampleMeans" WHERE "SampleId" = (SELECT MIN("Id") FROM "Samples")) m
            """);
        await database.WriteAsync($"""
            SET session_replication_role = replica;
            INSERT INTO "ImportedFiles" ("Way", "Name", "Sha256", "Bytes", "Rows", "NewRows", "KnownRows", "RefusedRows", "Samples", "Refusals", "EntryKey", "PersonId", "ObservedAt", "EnteredAt")
            SELECT 'Folder', {Text("spark-")} || '.csv', md5(n::text) || md5(n::text), 4711, 60, 40, 18, 2, 20, '[]', gen_random_uuid(), first."PersonId", first."ObservedAt", first."EnteredAt"
            FROM generate_series(1, {Long}) n, (SELECT * FROM "Temperatures" ORDER BY "Id" LIMIT 1) first
            """);
    }

    private static string Text(string prefix) => $"'{prefix}' || lpad(n::text, 4, '0')";

    /// <summary>Rows like the first one of a table, with some columns of their own.</summary>
    private static async Task<string> MoreAsync(ShopDatabase database, string table, string copies, (string Column, string Value)[] own)
    {
        var columns = await database.ReadAsync<string>($"SELECT column_name::text FROM information_schema.columns WHERE table_name = '{table}' AND column_name <> 'Id'");
        var values = columns.Select(column => own.FirstOrDefault(mine => mine.Column == column).Value ?? (column is "EntryKey" or "Version" ? "gen_random_uuid()" : $"first.\"{column}\""));
        // A fact has its entry, which is not copied: the checks of that are off for as long as this connection lasts.
        return $"SET session_replication_role = replica; INSERT INTO \"{table}\" ({string.Join(", ", columns.Select(column => $"\"{column}\""))}) "
            + $"SELECT {string.Join(", ", values)} FROM {copies}, (SELECT * FROM \"{table}\" ORDER BY \"Id\" LIMIT 1) first";
    }
}
