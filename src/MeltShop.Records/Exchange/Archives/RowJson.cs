using System.Text.Json;

namespace MeltShop.Records.Exchange.Archives;

/// <summary>A row as one line of JSON: an object with a member for each column.</summary>
internal static class RowJson
{
    public static void Write(Utf8JsonWriter json, StoredTable table, object?[] row)
    {
        json.WriteStartObject();
        for (var i = 0; i < row.Length; i++)
        {
            json.WritePropertyName(table.Columns[i].Name);
            switch (row[i])
            {
                case null: json.WriteNullValue(); break;
                case bool yes: json.WriteBooleanValue(yes); break;
                case long whole: json.WriteNumberValue(whole); break;
                case double number: json.WriteNumberValue(number); break;
                case StoredValue.Unreadable: throw new InvalidDataException($"{table.Name}.{table.Columns[i].Name} holds a value of another type: the check of the trail says where.");
                default: json.WriteStringValue(StoredValue.Text(row[i])); break;
            }
        }

        json.WriteEndObject();
    }

    /// <exception cref="InvalidDataException">The line is no row of this table; the message says why.</exception>
    public static object?[] Read(StoredTable table, string line, long number)
    {
        try
        {
            using var document = JsonDocument.Parse(line);
            return [.. table.Columns.Select(c => Value(c, document.RootElement.GetProperty(c.Name)))];
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException or FormatException or OverflowException)
        {
            throw new InvalidDataException($"{ArchiveContents.RecordsOf(table.Name)}, line {number}: {e.Message}", e);
        }
    }

    private static object? Value(StoredColumn column, JsonElement value) => (column.Kind, value.ValueKind) switch
    {
        (_, JsonValueKind.Null) => null,
        (ValueKind.YesNo, _) => value.GetBoolean(),
        (ValueKind.Integer, _) => value.GetInt64(),
        (ValueKind.Number, _) => value.GetDouble(),
        (ValueKind.Instant, _) => StoredValue.Instant(value.GetString()!),
        (ValueKind.Identifier, _) => value.GetGuid(),
        (ValueKind.Bytes, _) => value.GetBytesFromBase64(),
        _ => value.GetString(),
    };
}
