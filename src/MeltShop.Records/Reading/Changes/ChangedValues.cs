using System.Globalization;
using MeltShop.Records.Exchange;
using MeltShop.Records.Mapping;
using Microsoft.EntityFrameworkCore.Metadata;

namespace MeltShop.Records.Reading.Changes;

/// <summary>The texts of the trail as values that a page can print.</summary>
internal sealed class ChangedValues(RecordsContext db)
{
    /// <summary>What people call a row, the first that it has.</summary>
    private static readonly string[] Names = ["Code", "Number", "DisplayName", "Name"];

    public async Task<object?> Of(IColumn column, string? text, CancellationToken ct)
    {
        if (text is null) return null;
        if (column.Table.ForeignKeyConstraints.FirstOrDefault(k => k.Columns is [var only] && only == column) is { } reference)
            return await Name(reference.PrincipalTable, text, ct);
        var property = column.PropertyMappings[0].Property;
        var type = Nullable.GetUnderlyingType(property.ClrType) ?? property.ClrType;
        if (type.IsEnum) return Enum.Parse(type, text);
        if (type == typeof(decimal)) return decimal.Parse(text, CultureInfo.InvariantCulture) / 100; // money is kept in hundredths
        if (type == typeof(DateTimeOffset)) return DateTimeOffset.ParseExact(text, "O", CultureInfo.InvariantCulture);
        if (type == typeof(DateOnly)) return DateOnly.ParseExact(text, CalendarDay.Form, CultureInfo.InvariantCulture);
        return StoredTables.KindOf(property) switch
        {
            ValueKind.Integer or ValueKind.Number => double.Parse(text, CultureInfo.InvariantCulture),
            ValueKind.YesNo => bool.Parse(text),
            _ => text,
        };
    }

    /// <summary>The name of the row that is referred to; its key where it has none.</summary>
    private async Task<string> Name(ITableBase table, string key, CancellationToken ct)
    {
        if (Names.FirstOrDefault(n => table.FindColumn(n) is not null) is not { } name || !long.TryParse(key, out var id)) return key;
        await using var command = await StoredRows.Command(db, FormattableString.Invariant($"SELECT \"{name}\" FROM \"{table.Name}\" WHERE \"Id\" = {id}"), ct);
        return (string?)await command.ExecuteScalarAsync(ct) ?? key;
    }
}
