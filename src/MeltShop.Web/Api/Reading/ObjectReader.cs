using System.Text.Json;
using MeltShop.Metallurgy;

namespace MeltShop.Web.Api.Reading;

/// <summary>
/// Reads one JSON object field by field. What is wrong goes into the findings, under its exact path, and reading goes on: a
/// caller learns of every mistake at once. A field that nobody asked for by the time of <see cref="RefuseTheRest"/> is one
/// that the contract does not know.
/// </summary>
internal sealed partial class ObjectReader
{
    private readonly Dictionary<string, JsonElement> fields = new(StringComparer.Ordinal);
    private readonly HashSet<string> asked = new(StringComparer.Ordinal);

    public ObjectReader(JsonElement element, string path, List<Finding> findings)
    {
        Path = path;
        Findings = findings;
        foreach (var field in element.EnumerateObject())
        {
            if (!fields.TryAdd(field.Name, field.Value)) Report(field.Name, "field.duplicate");
        }
    }

    /// <summary>Where this object is; empty for the body itself.</summary>
    public string Path { get; }

    /// <summary>All that was found so far in the whole body.</summary>
    public List<Finding> Findings { get; }

    /// <summary>The path of a field of this object.</summary>
    public string PathOf(string name) => Path.Length == 0 ? name : $"{Path}.{name}";

    /// <summary>Adds a finding about a field of this object.</summary>
    public void Report(string name, string code, params IReadOnlyList<object> arguments) => Findings.Add(new(PathOf(name), code, arguments));

    /// <summary>True where a field is there and not null.</summary>
    public bool Has(string name) => Find(name) is not null;

    /// <summary>A number that may be left out.</summary>
    public double? Number(string name, NumberRule rule) => Find(name) is { } value ? ReadNumber(value, name, rule) : null;

    /// <summary>A number that has to be there; NaN, and a finding, where it is not or is wrong.</summary>
    public double Needed(string name, NumberRule rule)
    {
        if (Find(name) is { } value) return ReadNumber(value, name, rule) ?? double.NaN;
        Report(name, "field.missing");
        return double.NaN;
    }

    /// <summary>A text that has to be there and not blank; empty, and a finding, where it is not.</summary>
    public string NeededText(string name)
    {
        if (!Has(name)) Report(name, "field.missing");
        return Text(name) ?? "";
    }

    /// <summary>A text that may be left out.</summary>
    public string? Text(string name)
    {
        if (Find(name) is not { } value) return null;
        if (value.ValueKind != JsonValueKind.String)
            Report(name, "text.wrongKind");
        else if (string.IsNullOrWhiteSpace(value.GetString()))
            Report(name, "text.blank");
        else
            return value.GetString();
        return null;
    }

    /// <summary>An object that may be left out.</summary>
    public ObjectReader? Object(string name) => Find(name) is { } value ? AsObject(value, PathOf(name)) : null;

    /// <summary>An object that has to be there.</summary>
    public ObjectReader? NeededObject(string name)
    {
        if (!Has(name)) Report(name, "field.missing");
        return Object(name);
    }

    /// <summary>A list of objects that has to be there; null, and a finding, where it is not.</summary>
    /// <param name="name">The field.</param>
    /// <param name="most">Most items that are read.</param>
    /// <param name="whenEmpty">Code of the finding where the list is empty; null where it may be.</param>
    public IReadOnlyList<ObjectReader>? NeededList(string name, int most, string? whenEmpty = null)
    {
        if (Find(name) is not { } list)
            Report(name, "field.missing");
        else if (list.ValueKind != JsonValueKind.Array)
            Report(name, "list.wrongKind");
        else if (list.GetArrayLength() > most)
            Report(name, "list.tooLong", most);
        else if (list.GetArrayLength() == 0 && whenEmpty is not null)
            Report(name, whenEmpty);
        else
            return [.. list.EnumerateArray().Select((item, i) => AsObject(item, $"{PathOf(name)}[{i}]")).OfType<ObjectReader>()];
        return null;
    }

    /// <summary>Names every field that was not asked for; call it when an object has been read.</summary>
    public void RefuseTheRest()
    {
        foreach (var name in fields.Keys.Where(name => !asked.Contains(name))) Report(name, "field.unknown");
    }

    /// <summary>The value of a field, or null where it is absent or null: the contract makes no difference.</summary>
    private JsonElement? Find(string name)
    {
        asked.Add(name);
        return fields.TryGetValue(name, out var value) && value.ValueKind != JsonValueKind.Null ? value : null;
    }

    private ObjectReader? AsObject(JsonElement value, string path)
    {
        if (value.ValueKind == JsonValueKind.Object) return new(value, path, Findings);
        Findings.Add(new(path, "object.wrongKind"));
        return null;
    }

    private double? ReadNumber(JsonElement value, string name, NumberRule rule)
    {
        if (value.ValueKind != JsonValueKind.Number)
            Report(name, "number.wrongKind");
        else if (!value.TryGetDouble(out var number) || !double.IsFinite(number))
            Report(name, "number.notFinite");
        else if (Math.Abs(number) > NumberRule.GreatestMagnitude)
            Report(name, "number.tooLarge", NumberRule.GreatestMagnitude);
        else if (!rule.Holds(number))
            Report(name, rule.Code, number);
        else
            return number;
        return null;
    }
}
