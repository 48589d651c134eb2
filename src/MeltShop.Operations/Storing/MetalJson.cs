using System.Text.Json;
using System.Text.Json.Serialization;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Operations.Storing;

/// <summary>An amount of metal as its mass and analysis.</summary>
internal sealed class MetalJson : JsonConverter<Metal>
{
    public override Metal Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var kept = JsonSerializer.Deserialize<Kept>(ref reader, options) ?? throw new JsonException("No metal is kept here.");
        return Metal.Of(kept.Kg, kept.Analysis);
    }

    public override void Write(Utf8JsonWriter writer, Metal value, JsonSerializerOptions options) =>
        JsonSerializer.Serialize(writer, new Kept(value.Kg, value.Analysis), options);

    private sealed record Kept(double Kg, Analysis Analysis);
}
