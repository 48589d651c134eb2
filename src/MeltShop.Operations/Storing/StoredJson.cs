using System.Text.Json;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Storing;

/// <summary>How problems and answers are kept beside what was decided with them: opened again a year later they give the same numbers.</summary>
public static class StoredJson
{
    public static JsonSerializerOptions Options { get; } = new(RecordsJson.Options)
    {
        Converters = { new AnalysisJson(), new MetalJson(), new FadeJson() },
    };

    public static string Text<T>(T value) => JsonSerializer.Serialize(value, Options);

    /// <exception cref="JsonException">The text is not of that kind.</exception>
    public static T Value<T>(string text) =>
        JsonSerializer.Deserialize<T>(text, Options) ?? throw new JsonException($"No {typeof(T).Name} is kept here.");
}
