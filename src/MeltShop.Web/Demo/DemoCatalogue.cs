using System.Text.Json;

namespace MeltShop.Web.Demo;

/// <summary>
/// The demo foundry as data: an invented shop whose materials, windows and minima are taken from published ranges, each with its
/// source. Prices, stock, piece masses, people and equipment are invented.
/// </summary>
public sealed record DemoCatalogue
{
    /// <summary>The one site of an installation.</summary>
    public required DemoSite Site { get; init; }

    /// <summary>One person a role.</summary>
    public required IReadOnlyList<DemoPerson> People { get; init; }

    /// <summary>Furnaces.</summary>
    public required IReadOnlyList<DemoFurnace> Furnaces { get; init; }

    /// <summary>Treatment ladles.</summary>
    public required IReadOnlyList<DemoLadle> Ladles { get; init; }

    /// <summary>All materials of the yard: charge, additions, treatment alloys, inoculants, cover steel.</summary>
    public required IReadOnlyList<DemoMaterial> Materials { get; init; }

    /// <summary>Grades with their windows and default recipes.</summary>
    public required IReadOnlyList<DemoGrade> Grades { get; init; }

    /// <summary>Reads the data embedded in this program.</summary>
    /// <exception cref="JsonException">A field is missing, unknown or of the wrong kind: a fault of the data, not of a user.</exception>
    public static DemoCatalogue Load() => new()
    {
        Site = Read<DemoSite>("site"),
        People = ReadAll<DemoPerson>("people"),
        Furnaces = ReadAll<DemoFurnace>("furnaces"),
        Ladles = ReadAll<DemoLadle>("ladles"),
        Materials = ReadAll<DemoMaterial>("materials-steel-scrap", "materials-pig-iron", "materials-returns-and-cast-scrap", "materials-ferro-alloys", "materials-carburisers", "materials-ladle"),
        Grades = ReadAll<DemoGrade>("grades-ductile", "grades-grey"),
    };

    /// <summary>A material by its code.</summary>
    /// <exception cref="InvalidOperationException">There is none.</exception>
    public DemoMaterial Material(string code) => Materials.Single(m => m.Code == code);

    /// <summary>A grade by its designation.</summary>
    /// <exception cref="InvalidOperationException">There is none.</exception>
    public DemoGrade Grade(string code) => Grades.Single(g => g.Code == code);

    private static List<T> ReadAll<T>(params ReadOnlySpan<string> names)
    {
        var all = new List<T>();
        foreach (var name in names) all.AddRange(Read<List<T>>(name));
        return all;
    }

    private static T Read<T>(string name)
    {
        var resource = $"{typeof(DemoCatalogue).Namespace}.Data.{name}.json";
        using var stream = typeof(DemoCatalogue).Assembly.GetManifestResourceStream(resource)
            ?? throw new InvalidOperationException($"The program lacks its embedded data '{resource}'.");
        return JsonSerializer.Deserialize<T>(stream, DemoJson.Options) ?? throw new JsonException($"'{resource}' is empty.");
    }
}
