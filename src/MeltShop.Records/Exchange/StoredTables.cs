using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace MeltShop.Records.Exchange;

/// <summary>The tables of the model, so that a new one is copied, exported and checked without a word anywhere else.</summary>
internal static class StoredTables
{
    /// <summary>All tables, each after those that it refers to: written in this order, no reference points to a row that is not there yet.</summary>
    public static IReadOnlyList<StoredTable> Of(RecordsContext db)
    {
        var (ordered, seen) = (new List<ITable>(), new HashSet<ITable>());
        foreach (var table in db.Model.GetRelationalModel().Tables.OrderBy(t => t.Name, StringComparer.Ordinal)) Visit(table);
        return [.. ordered.Select(Of)];

        void Visit(ITable table)
        {
            if (!seen.Add(table)) return;
            foreach (var reference in table.ForeignKeyConstraints.OrderBy(k => k.PrincipalTable.Name, StringComparer.Ordinal)) Visit((ITable)reference.PrincipalTable);
            ordered.Add(table);
        }
    }

    public static ValueKind KindOf(IReadOnlyProperty property)
    {
        var type = Nullable.GetUnderlyingType(property.ClrType) ?? property.ClrType;
        if (type == typeof(DateTimeOffset)) return ValueKind.Instant;
        if (type == typeof(Guid)) return ValueKind.Identifier;
        var stored = property.GetTypeMapping().Converter?.ProviderClrType ?? type;
        return Type.GetTypeCode(Nullable.GetUnderlyingType(stored) ?? stored) switch
        {
            TypeCode.String => ValueKind.Text,
            TypeCode.Boolean => ValueKind.YesNo,
            TypeCode.Int16 or TypeCode.Int32 or TypeCode.Int64 => ValueKind.Integer,
            TypeCode.Double => ValueKind.Number,
            _ when stored == typeof(byte[]) => ValueKind.Bytes,
            _ => throw new NotSupportedException($"{property.DeclaringType.ClrType.Name}.{property.Name} is of a type that is not kept in the records yet: {stored.Name}."),
        };
    }

    private static StoredTable Of(ITable table) => new(
        table.Name,
        [.. table.Columns.Select(c => new StoredColumn(c.Name, KindOf(c.PropertyMappings[0].Property)))],
        [.. table.PrimaryKey!.Columns.Select(c => c.Name)]);
}
