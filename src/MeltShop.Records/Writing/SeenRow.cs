using MeltShop.Metallurgy;
using MeltShop.Records.Keeping;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;

namespace MeltShop.Records.Writing;

/// <summary>A row and the version of it that somebody saw. The refusal of an outdated entry carries it, so that a page can say what changed since.</summary>
/// <param name="Table">Name of the table.</param>
/// <param name="Key">Of the row, as the trail writes it.</param>
/// <param name="Version">The version that was seen.</param>
public sealed record SeenRow(string Table, string Key, Guid Version)
{
    /// <summary>The code of the refusal.</summary>
    public const string Code = "version.stale";

    /// <summary>From the refusal; null where it does not say.</summary>
    public static SeenRow? Of(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return finding is { Code: Code, Arguments: [string table, string key, string version] } && Guid.TryParse(version, out var seen) ? new(table, key, seen) : null;
    }

    public static SeenRow Of<TRow>(RecordsContext db, TRow row, Guid seen)
        where TRow : class, IVersioned
    {
        ArgumentNullException.ThrowIfNull(db);
        return Of(db.Entry(row), seen);
    }

    /// <summary>The refusal.</summary>
    public Finding Outdated(string path) => new(path, Code, Table, Key, Version.ToString());

    internal static SeenRow Of(DbUpdateConcurrencyException conflict) =>
        conflict.Entries[0] is { Entity: IVersioned } row ? Of(row, (Guid)row.Property(nameof(IVersioned.Version)).OriginalValue!) : new("", "", Guid.Empty);

    private static SeenRow Of(EntityEntry row, Guid seen)
    {
        var image = RowImages.Of(row);
        return new(image.Table, image.Key, seen);
    }
}
