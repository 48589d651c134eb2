using System.Text.Json;
using System.Text.Json.Serialization;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Web.Demo;

/// <summary>How the demo data are read: strictly, so that a misspelt or missing field is found by the first test and not in a plan.</summary>
internal static class DemoJson
{
    public static JsonSerializerOptions Options { get; } = new(JsonSerializerDefaults.Web)
    {
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        NumberHandling = JsonNumberHandling.Strict,
        RespectNullableAnnotations = true,
        PropertyNameCaseInsensitive = false,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false), new AnalysisConverter(), new ElementConverter() },
    };

    private sealed class AnalysisConverter : JsonConverter<Analysis>
    {
        public override Analysis Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            Analysis.Of(JsonSerializer.Deserialize<Dictionary<Element, double>>(ref reader, options) ?? throw new JsonException("An analysis is missing."));

        public override void Write(Utf8JsonWriter writer, Analysis value, JsonSerializerOptions options) =>
            JsonSerializer.Serialize(writer, value.ToDictionary(), options);
    }

    private sealed class ElementConverter : JsonConverter<Element>
    {
        public override Element Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            Element.TryParse(reader.GetString(), out var element) ? element : throw new JsonException($"'{reader.GetString()}' is no known element.");

        public override Element ReadAsPropertyName(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            Read(ref reader, typeToConvert, options);

        public override void Write(Utf8JsonWriter writer, Element value, JsonSerializerOptions options) => writer.WriteStringValue(value.Symbol);

        public override void WriteAsPropertyName(Utf8JsonWriter writer, Element value, JsonSerializerOptions options) =>
            writer.WritePropertyName(value.Symbol);
    }
}
