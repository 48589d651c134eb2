using System.Text.Json.Serialization;

namespace MeltShop.Records.Writing;

/// <summary>Says that something changed, so that whoever shows it reads it again.</summary>
/// <param name="Kind">One of <see cref="ChangeKind"/>.</param>
/// <param name="Id">Its id.</param>
/// <param name="Version">Its version after the change; null for what has none.</param>
public sealed record ChangeNotice(string Kind, long Id, Guid? Version = null)
{
    /// <summary>Something may have changed unheard: it concerns whoever listens.</summary>
    public static ChangeNotice Anything { get; } = new("anything", 0);

    /// <summary>A heat and its ladles are shown with it: what went in, what was measured, what they are judged by and where they stand.</summary>
    [JsonIgnore]
    public bool IsOfHeats => Kind is ChangeKind.Heat or ChangeKind.TreatedLadle or ChangeKind.Sample or ChangeKind.Instrument or ChangeKind.Grade
        or ChangeKind.Plan or ChangeKind.Furnace or ChangeKind.Ladle or ChangeKind.Material;
}

/// <summary>What a change notice can be about.</summary>
public static class ChangeKind
{
    public const string Site = "site";
    public const string Furnace = "furnace";
    public const string Ladle = "ladle";
    public const string Material = "material";
    public const string Grade = "grade";
    public const string Plan = "plan";
    public const string Heat = "heat";
    public const string Sample = "sample";
    public const string TreatedLadle = "treatedLadle";
    public const string Person = "person";
    public const string ApiKey = "apiKey";
    public const string Import = "import";
    public const string Draft = "draft";
    public const string Instrument = "instrument";
    public const string Order = "order";
}
