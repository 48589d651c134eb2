using MeltShop.Records.Exchange;
using MeltShop.Records.Keeping;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace MeltShop.Records.Writing;

/// <summary>A table whose rows the trail holds.</summary>
/// <param name="Table">As it is stored.</param>
/// <param name="Columns">What the trail says of its columns, by their stored names.</param>
internal sealed record CoveredTable(StoredTable Table, IReadOnlyDictionary<string, CoveredColumn> Columns);

/// <param name="Name">As the trail calls it: a column of an owned part has no prefix there.</param>
/// <param name="MayBeEmpty">The database takes a row without it.</param>
/// <param name="Text">How the trail writes what is stored.</param>
internal sealed record CoveredColumn(string Name, bool MayBeEmpty, Func<object?, string?> Text);

/// <summary>The tables whose rows the trail holds, and the entries, each of which is a row of the trail.</summary>
internal static class CoveredTables
{
    public static IReadOnlyList<CoveredTable> Of(RecordsContext db)
    {
        var covered = new Dictionary<string, Dictionary<string, CoveredColumn>>();
        foreach (var type in db.Model.GetEntityTypes().Where(t => RowImages.Covers(t.ClrType) || t.ClrType == typeof(Entry)))
        {
            var table = type.GetTableName()!;
            if (!covered.TryGetValue(table, out var columns)) covered[table] = columns = [];
            foreach (var property in type.GetProperties().Where(p => !p.IsPrimaryKey() && !RowImages.IsSum(p)))
                columns[property.GetColumnName(StoreObjectIdentifier.Table(table))!] = new(property.GetColumnName(), property.IsColumnNullable(StoreObjectIdentifier.Table(table)), TextOf(property));
        }

        return [.. StoredTables.Of(db).Where(t => covered.ContainsKey(t.Name)).Select(t => new CoveredTable(t, covered[t.Name]))];
    }

    /// <summary>A choice that is stored as a number is written by its name.</summary>
    private static Func<object?, string?> TextOf(IReadOnlyProperty property)
    {
        var type = Nullable.GetUnderlyingType(property.ClrType) ?? property.ClrType;
        return type.IsEnum ? stored => stored is long number ? Enum.ToObject(type, number).ToString() : StoredValue.Text(stored) : StoredValue.Text;
    }
}
