using System.Text.Json;
using System.Text.Json.Serialization;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Operations.Storing;

/// <summary>A fade by the field that names its kind, as in the calculation contract: <c>perMinute</c> or <c>percentPerMinute</c>.</summary>
internal sealed class FadeJson : JsonConverter<Fade>
{
    public override Fade Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        JsonSerializer.Deserialize<Kept>(ref reader, options) switch
        {
            { PerMinute: { } rate } => new Fade.Exponential(rate),
            { PercentPerMinute: { } rate } => new Fade.Linear(rate),
            _ => throw new JsonException("A fade is exponential or linear."),
        };

    public override void Write(Utf8JsonWriter writer, Fade value, JsonSerializerOptions options) =>
        JsonSerializer.Serialize(writer, new Kept((value as Fade.Exponential)?.PerMinute, (value as Fade.Linear)?.PercentPerMinute), options);

    private sealed record Kept(double? PerMinute, double? PercentPerMinute);
}
