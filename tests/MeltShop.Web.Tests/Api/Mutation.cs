using System.Text.Json.Nodes;

namespace MeltShop.Web.Tests.Api;

/// <summary>A valid body with a few places made different at random: fields left out, doubled, misnamed; values odd, extreme or of another kind.</summary>
internal sealed class Mutation(Random random)
{
    private static readonly string[] Odd =
    [
        "null", "true", "\"\"", "\"C\"", "\"NaN\"", "[]", "{}", "[[]]", "0", "-0", "-1", "1", "50", "99.999999", "100", "100.0000000001", "1e-300", "1e-12", "1e-6",
        "1e6", "1e15", "-1e15", "1e16", "1e308", "1e999", "NaN", "3.5", "0.333333",
    ];

    private static readonly double[] Factors = [0, 1e-9, 1e-3, 0.5, 0.999999, 1.000001, 2, 1e3, 1e9, -1];

    public string Of(string body)
    {
        var root = JsonNode.Parse(body)!;
        var literals = new List<string>();
        for (var n = random.Next(1, 4); n > 0; n--) Change(root, literals);
        var text = root.ToJsonString(new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
        // Literals that are no JSON are put in last, by their mark.
        for (var i = 0; i < literals.Count; i++) text = text.Replace($"\"<{i}>\"", literals[i], StringComparison.Ordinal);
        return random.Next(50) == 0 ? text[..random.Next(text.Length)] : text;
    }

    private void Change(JsonNode root, List<string> literals)
    {
        var places = Places(root).ToList();
        if (places.Count == 0) return;
        var (parent, key) = places[random.Next(places.Count)];
        switch (random.Next(5))
        {
            case 0 when parent is JsonObject fields:
                fields.Remove((string)key);
                break;
            case 1 when parent is JsonObject fields:
                fields[(string)key + "x"] = fields[(string)key]?.DeepClone();
                break;
            case 2 when parent is JsonArray list:
                list.Add(list[(int)key]?.DeepClone());
                break;
            case 3 when At(parent, key) is JsonValue number && number.TryGetValue<double>(out var value):
                Set(parent, key, JsonValue.Create(value * Factors[random.Next(Factors.Length)]));
                break;
            default:
                literals.Add(Odd[random.Next(Odd.Length)]);
                Set(parent, key, JsonValue.Create($"<{literals.Count - 1}>"));
                break;
        }
    }

    private static IEnumerable<(JsonNode Parent, object Key)> Places(JsonNode? node)
    {
        IEnumerable<(JsonNode, object, JsonNode?)> children = node switch
        {
            JsonObject fields => fields.Select(field => ((JsonNode)fields, (object)field.Key, field.Value)),
            JsonArray list => list.Select((item, i) => ((JsonNode)list, (object)i, item)),
            _ => [],
        };
        foreach (var (parent, key, child) in children.ToList())
        {
            yield return (parent, key);
            foreach (var place in Places(child)) yield return place;
        }
    }

    private static JsonNode? At(JsonNode parent, object key) => key is string name ? parent[name] : parent[(int)key];

    private static void Set(JsonNode parent, object key, JsonNode value)
    {
        if (key is string name)
            parent[name] = value;
        else
            parent[(int)key] = value;
    }
}
