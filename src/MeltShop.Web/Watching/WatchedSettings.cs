namespace MeltShop.Web.Watching;

/// <summary>A folder whose files are taken in by themselves; off where no folder is named.</summary>
/// <param name="Folder">Where instruments put their files.</param>
/// <param name="Map">Name of the column map that they are read by.</param>
/// <param name="By">Sign-in name of the person who answers for them.</param>
internal sealed record WatchedSettings(string Folder, string Map, string By)
{
    /// <summary>Null where the folder is not watched.</summary>
    /// <exception cref="Composition.SettingsException">A folder is named and the rest is missing.</exception>
    public static WatchedSettings? From(IConfiguration configuration)
    {
        var section = configuration.GetSection("MeltShop:ImportFolder");
        if (section["Path"] is not { Length: > 0 } folder) return null;
        return section["Map"] is { Length: > 0 } map && section["By"] is { Length: > 0 } by
            ? new(Path.GetFullPath(folder), map, by)
            : throw new Composition.SettingsException("MeltShop:ImportFolder:Path is set, so MeltShop:ImportFolder:Map and MeltShop:ImportFolder:By are needed too.");
    }
}
