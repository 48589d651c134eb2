using System.Runtime.CompilerServices;

namespace MeltShop.Records.Tests.Kept;

/// <summary>
/// A database of each schema that ever landed, with a shop in it, kept beside this file: <c>First.db</c> for SQLite, and <c>First.sql</c> for
/// PostgreSQL. The first ones were written by the program of that day, with its demo; later ones by <see cref="Keeping"/>.
/// </summary>
public static class KeptSchemas
{
    /// <summary>
    /// The migration that has not landed yet and is still made anew from the model: it needs no kept database. Empty between landings.
    /// </summary>
    public const string NotYetLanded = "Eighth";

    /// <summary>Set to 1, the tests write the database of the latest migration into this folder.</summary>
    public const string Keeping = "MELTSHOP_KEEP_SCHEMA";

    public static bool IsKeeping => Environment.GetEnvironmentVariable(Keeping) == "1";

    /// <summary>The name without its time, which differs between the two databases.</summary>
    public static string Name(string migration) => migration[(migration.IndexOf('_', StringComparison.Ordinal) + 1)..];

    /// <summary>The kept file that is run against; it is copied beside the tests' program.</summary>
    public static string File(string name, string ending) => Path.Combine(AppContext.BaseDirectory, "Kept", $"{name}.{ending}");

    /// <summary>Where a new file has to be put, in the sources.</summary>
    public static string Source(string name, string ending, [CallerFilePath] string here = "") =>
        Path.Combine(Path.GetDirectoryName(here)!, $"{name}.{ending}");
}
