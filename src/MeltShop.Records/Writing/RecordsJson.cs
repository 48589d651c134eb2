using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Records.Writing;

/// <summary>The JSON that is kept: results, problems, answers, and the payload of the trail.</summary>
public static class RecordsJson
{
    public static JsonSerializerOptions Options { get; } = new(JsonSerializerDefaults.Web)
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, // kept in a text column, never in a page as it is
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase), new ElementText() },
    };

    public static string Text<T>(T value) => JsonSerializer.Serialize(value, Options);

    public static T? Value<T>(string text) => JsonSerializer.Deserialize<T>(text, Options);

    /// <summary>What was asked, what came of it, and the rows as they are now.</summary>
    internal static string Payload(object asked, string result, IReadOnlyList<RowImage> rows, BulkImages bulk)
    {
        var payload = new JsonObject
        {
            ["asked"] = JsonSerializer.SerializeToNode(asked, asked.GetType(), Options),
            ["result"] = JsonNode.Parse(result),
            ["rows"] = JsonSerializer.SerializeToNode(rows, Options),
        }.ToJsonString(Options);
        return bulk.IsEmpty ? payload : $"{payload[..^1]},\"{BulkImages.Name}\":{bulk.Text()}}}"; // millions of nodes would take their time
    }

    private sealed class ElementText : JsonConverter<Element>
    {
        public override Element Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            Element.TryParse(reader.GetString(), out var element) ? element : throw new JsonException("No known element symbol.");

        public override void Write(Utf8JsonWriter writer, Element value, JsonSerializerOptions options) => writer.WriteStringValue(value.Symbol);

        public override Element ReadAsPropertyName(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            Read(ref reader, typeToConvert, options);

        public override void WriteAsPropertyName(Utf8JsonWriter writer, Element value, JsonSerializerOptions options) =>
            writer.WritePropertyName(value.Symbol);
    }
}
