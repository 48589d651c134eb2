using System.Globalization;
using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Keeping;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;

namespace MeltShop.Records.Writing;

/// <summary>A row as it was after a change: table, key, and its columns as text.</summary>
public sealed record RowImage(string Table, string Key, IReadOnlyDictionary<string, string?> Columns);

/// <summary>
/// Collects the rows that a transaction writes, over all its saves, so that the trail holds what was written and a later check can
/// compare. The texts are the same on both databases.
/// </summary>
internal sealed class RowImages
{
    private readonly List<EntityEntry> pending = [];
    private readonly List<RowImage> rows = [];

    public RowImages(RecordsContext db)
    {
        db.SavingChanges += (_, _) => pending.AddRange(db.ChangeTracker.Entries()
            .Where(e => e.State is EntityState.Added or EntityState.Modified && Covers(e.Metadata.ClrType)));
        db.SavedChanges += (_, _) =>
        {
            rows.AddRange(pending.Select(Of)); // after the save, when the ids are known
            pending.Clear();
        };
        db.SaveChangesFailed += (_, _) => pending.Clear();
    }

    public IReadOnlyList<RowImage> Rows => rows;

    /// <summary>False for what is not part of the records proper: drafts, keys, people's sign-in data, and the trail itself.</summary>
    public static bool Covers(Type type) =>
        type != typeof(Draft) && type != typeof(Entry) && type != typeof(TrailRow) && type != typeof(TrailHead)
        && type.Namespace?.StartsWith("MeltShop.Records.", StringComparison.Ordinal) == true
        && type.Namespace != "MeltShop.Records.People";

    public static RowImage Of(EntityEntry row)
    {
        var key = row.Metadata.FindPrimaryKey()!.Properties.Select(p => Text(row.Property(p.Name).CurrentValue));
        var columns = row.Properties.Where(p => !p.Metadata.IsPrimaryKey())
            .ToDictionary(p => p.Metadata.GetColumnName(), p => Text(p.CurrentValue), StringComparer.Ordinal);
        return new(row.Metadata.GetTableName()!, string.Join('/', key), columns);
    }

    private static string? Text(object? value) => value switch
    {
        null => null,
        DateTimeOffset instant => instant.UtcDateTime.ToString("O", CultureInfo.InvariantCulture),
        decimal amount => Money.ToMinorUnits(amount).ToString(CultureInfo.InvariantCulture),
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        Element element => element.Symbol,
        IFormattable other => other.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString(),
    };
}
