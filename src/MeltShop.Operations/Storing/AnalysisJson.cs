using System.Text.Json;
using System.Text.Json.Serialization;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Operations.Storing;

/// <summary>An analysis as percents by symbol: <c>{"C": 3.55, "Si": 2.1}</c>.</summary>
internal sealed class AnalysisJson : JsonConverter<Analysis>
{
    public override Analysis Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Analysis.Of(JsonSerializer.Deserialize<Dictionary<Element, double>>(ref reader, options) ?? []);

    public override void Write(Utf8JsonWriter writer, Analysis value, JsonSerializerOptions options) =>
        JsonSerializer.Serialize(writer, new Dictionary<Element, double>(value), options);
}
