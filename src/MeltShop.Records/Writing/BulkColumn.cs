using System.Globalization;
using MeltShop.Records.Exchange;
using MeltShop.Records.Keeping;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace MeltShop.Records.Writing;

/// <summary>A column of a table that is written in bulk, and how its value is taken from a row.</summary>
internal sealed class BulkColumn
{
    private readonly IProperty property;
    private readonly Func<object, object> stored;

    private BulkColumn(IProperty property)
    {
        if (property.IsShadowProperty()) throw new NotSupportedException($"{property.DeclaringType.ClrType.Name}.{property.Name} is no property of the row itself.");
        this.property = property;
        var converter = property.GetTypeMapping().Converter;
        stored = StoredTables.KindOf(property) switch
        {
            ValueKind.Instant => value => ((DateTimeOffset)value).Cut().UtcDateTime,
            ValueKind.Integer => value => (converter is null ? value : converter.ConvertToProvider(value)!) is var whole && whole is long ? whole : Convert.ToInt64(whole, CultureInfo.InvariantCulture),
            ValueKind.Identifier => value => value,
            _ => converter is null ? value => value : value => converter.ConvertToProvider(value)!,
        };
    }

    public string Name => property.GetColumnName();

    /// <summary>The database's type without its bounds.</summary>
    public string StoreType => property.GetRelationalTypeMapping().StoreTypeNameBase;

    /// <summary>In the order of the stored table.</summary>
    public static IReadOnlyList<BulkColumn> Of(IEntityType type, StoredTable table)
    {
        var properties = type.GetProperties().ToDictionary(p => p.GetColumnName());
        return [.. table.Columns.Select(c => new BulkColumn(properties[c.Name]))];
    }

    public object? Value(object row) => property.GetGetter().GetClrValue(row) is { } value ? stored(value) : null;
}
