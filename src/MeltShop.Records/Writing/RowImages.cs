using System.Text.Json.Serialization;
using MeltShop.Records.Exchange;
using MeltShop.Records.Keeping;
using MeltShop.Records.People;
using MeltShop.Records.Sites;
using MeltShop.Records.Yard;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Metadata;

namespace MeltShop.Records.Writing;

/// <summary>A row as it was after a change: table, key, and its columns as text; no columns where it was deleted.</summary>
/// <param name="Was">What the columns that changed held before, all of them where the row was deleted; null for a new row.</param>
public sealed record RowImage(
    string Table, string Key, IReadOnlyDictionary<string, string?>? Columns,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] IReadOnlyDictionary<string, string?>? Was = null);

/// <summary>
/// Collects the rows that a transaction writes, over all its saves, so that the trail holds what was written and a later check can
/// compare. The texts are the same on both databases.
/// </summary>
internal sealed class RowImages
{
    private static readonly HashSet<Type> Outside = [typeof(Draft), typeof(Entry), typeof(TrailRow), typeof(TrailHead), typeof(HeatCounter)];

    private readonly List<(EntityEntry Row, Dictionary<string, string?>? Was)> pending = [];
    private readonly List<RowImage> rows = [];

    public RowImages(RecordsContext db)
    {
        db.SavingChanges += (_, _) => pending.AddRange(db.ChangeTracker.Entries()
            .Where(e => e.State is EntityState.Added or EntityState.Modified or EntityState.Deleted && Covers(e.Metadata.ClrType))
            .Select(e => (e, Was(e))));
        db.SavedChanges += (_, _) =>
        {
            rows.AddRange(pending.Select(p => (p.Row.State == EntityState.Detached ? Gone(p.Row) : Of(p.Row)) with { Was = p.Was })); // now the ids are known
            pending.Clear();
        };
        db.SaveChangesFailed += (_, _) => pending.Clear();
    }

    public IReadOnlyList<RowImage> Rows => rows;

    /// <summary>
    /// False for what is no part of the records proper: drafts, keys, people's sign-in data, the trail itself, and the counter of
    /// the heat numbers, which the numbers themselves bear witness to.
    /// </summary>
    public static bool Covers(Type type) =>
        !Outside.Contains(type) && type.Namespace?.StartsWith("MeltShop.Records.", StringComparison.Ordinal) == true
        && type.Namespace != typeof(Person).Namespace;

    public static RowImage Of(EntityEntry row)
    {
        var key = row.Metadata.FindPrimaryKey()!.Properties.Select(p => Text(p, row.Property(p.Name).CurrentValue));
        var columns = row.Properties.Where(p => !p.Metadata.IsPrimaryKey() && !IsSum(p.Metadata))
            .ToDictionary(p => p.Metadata.GetColumnName(), p => Text(p.Metadata, p.CurrentValue), StringComparer.Ordinal);
        return new(row.Metadata.GetTableName()!, string.Join('/', key), columns);
    }

    /// <summary>True for a sum of a ledger, which the database itself adds up: the lines bear witness to it.</summary>
    public static bool IsSum(IReadOnlyProperty property) =>
        (property.DeclaringType.ClrType == typeof(Material) && property.Name == nameof(Material.StockKg))
        || (property.DeclaringType.ClrType == typeof(Furnace) && property.Name == nameof(Furnace.LiquidKg));

    /// <summary>A deleted row; an owned part that is gone leaves its columns empty in its owner's row.</summary>
    private static RowImage Gone(EntityEntry row)
    {
        var last = Of(row);
        return last with { Columns = row.Metadata.IsOwned() ? last.Columns!.Keys.ToDictionary(c => c, _ => (string?)null) : null };
    }

    /// <summary>Taken before the save, which forgets it.</summary>
    private static Dictionary<string, string?>? Was(EntityEntry row) => row.State == EntityState.Added ? null : row.Properties
        .Where(p => !p.Metadata.IsPrimaryKey() && !IsSum(p.Metadata))
        .Select(p => (p.Metadata, Was: Text(p.Metadata, p.OriginalValue), Now: Text(p.Metadata, p.CurrentValue)))
        .Where(p => row.State == EntityState.Deleted || p.Was != p.Now)
        .ToDictionary(p => p.Metadata.GetColumnName(), p => p.Was, StringComparer.Ordinal);

    private static string? Text(IReadOnlyProperty property, object? value) =>
        value is Enum choice ? choice.ToString() : StoredValue.Text(StoredValue.OfProperty(property, value));
}
