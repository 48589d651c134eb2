namespace MeltShop.Records.People;

/// <summary>The roles of a melt shop; their names are the names of the Identity roles.</summary>
public static class Role
{
    public const string Melter = "melter";
    public const string Metallurgist = "metallurgist";
    public const string Supervisor = "supervisor";

    /// <summary>Releases or holds castings; not production.</summary>
    public const string Inspector = "inspector";

    public const string Administrator = "administrator";

    public static IReadOnlyList<string> All { get; } = [Melter, Metallurgist, Supervisor, Inspector, Administrator];
}
