using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace MeltShop.Web.Tests.Api;

/// <summary>A small valid body of each endpoint, and one place in it made different.</summary>
public static class Bodies
{
    public const string Charge = """
        {"meltKg": 1000, "heel": {"kg": 100, "analysis": {"C": 3.5}},
         "materials": [{"code": "a", "pricePerTonne": 300, "analysis": {"C": 0.1}}, {"code": "b", "pricePerTonne": 500, "analysis": {"C": 4.2}}],
         "limits": [{"quantity": "C", "min": 3.0, "max": 3.5}]}
        """;

    public const string Correction = """
        {"bathKg": 1000, "temperatureC": 1450, "analysis": {"C": 3.4},
         "additions": [{"code": "a", "pricePerTonne": 900, "analysis": {"C": 99}}], "limits": [{"quantity": "C", "min": 3.5}]}
        """;

    public const string Treatment = """
        {"ironKg": 1000, "temperatureC": 1450, "baseAnalysis": {"S": 0.012, "Si": 1.5}, "targetMgPercent": 0.04, "atMinutes": 5,
         "alloy": {"analysis": {"Mg": 6}}, "mgRecoveryPercent": 50, "fade": {"perMinute": 0.03}, "sulphurLeftPercent": 0.005}
        """;

    public const string Analysis = """{"analysis": {"C": 3.6, "Si": 2.1}}""";

    public const string Burns = """{"burns": [{"C": 3.6}, {"C": 3.62}]}""";

    public static string Of(string endpoint) => endpoint switch
    {
        "charge" => Charge,
        "correction" => Correction,
        "treatment" => Treatment,
        "analysis" => Analysis,
        "burns" => Burns,
        _ => throw new ArgumentOutOfRangeException(nameof(endpoint), endpoint, "No such endpoint."),
    };

    /// <summary>The body with the literal <paramref name="json"/> at a path such as <c>materials[1].analysis.C</c>; nothing removes the field.</summary>
    public static string With(string body, string path, string? json)
    {
        // A mark stands in for the literal, which need not be JSON (NaN, 1e999, a field twice).
        const string mark = "\"<here>\"";
        var root = JsonNode.Parse(body)!;
        var steps = path.Replace("[", ".#", StringComparison.Ordinal).Replace("]", "", StringComparison.Ordinal).Split('.');
        var at = root;
        foreach (var step in steps[..^1]) at = step[0] == '#' ? at![Index(step)] : at![step];
        if (steps[^1][0] == '#')
            at![Index(steps[^1])] = JsonNode.Parse(mark);
        else if (json is null)
            at!.AsObject().Remove(steps[^1]);
        else
            at![steps[^1]] = JsonNode.Parse(mark);
        return root.ToJsonString(new JsonSerializerOptions { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping })
            .Replace(mark, json, StringComparison.Ordinal);
    }

    private static int Index(string step) => int.Parse(step.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture);
}
