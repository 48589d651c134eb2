using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using MeltShop.Records.Exchange;

namespace MeltShop.Records.Writing;

/// <summary>
/// The rows that a transaction wrote in bulk, as the trail keeps them: a table, its columns once, and a list of texts a row with the key
/// first. Written as they come, since there may be millions.
/// </summary>
#pragma warning disable CA1001 // its writer writes into memory: there is nothing to release
internal sealed class BulkImages
#pragma warning restore CA1001
{
    /// <summary>Their member in the payload of the trail.</summary>
    public const string Name = "bulk";

    private static readonly JsonWriterOptions Form = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, SkipValidation = true };

    private readonly ArrayBufferWriter<byte> bytes = new();
    private Utf8JsonWriter? writer;

    public bool IsEmpty => writer is null;

    public void Begin(string table, IEnumerable<string> columns)
    {
        if (writer is null) (writer = new(bytes, Form)).WriteStartArray();
        writer.WriteStartObject();
        writer.WriteString("table", table);
        writer.WriteStartArray("columns");
        foreach (var column in columns) writer.WriteStringValue(column);
        writer.WriteEndArray();
        writer.WriteStartArray("rows");
    }

    /// <summary>A row by its values, each as the text that <see cref="StoredValue.Text"/> has for it.</summary>
    /// <param name="key">The place of the key, which stands first.</param>
    public void Add(object?[] values, int key)
    {
        writer!.WriteStartArray();
        Add(values[key]);
        for (var i = 0; i < values.Length; i++)
        {
            if (i != key) Add(values[i]);
        }

        writer.WriteEndArray();
    }

    public void End()
    {
        writer!.WriteEndArray();
        writer.WriteEndObject();
    }

    /// <summary>All of them as JSON; nothing can be added any more.</summary>
    public string Text()
    {
        writer!.WriteEndArray();
        writer.Dispose();
        return Encoding.UTF8.GetString(bytes.WrittenSpan);
    }

    /// <summary>Straight into the bytes where that is possible: millions of texts would take their time.</summary>
    private void Add(object? value)
    {
        Span<byte> bytes = stackalloc byte[StoredValue.MostBytes];
        if (StoredValue.TryText(value, bytes, out var count)) writer!.WriteStringValue(bytes[..count]);
        else writer!.WriteStringValue(StoredValue.Text(value));
    }
}
