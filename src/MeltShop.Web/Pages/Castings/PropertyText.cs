using MeltShop.Metallurgy.Grades;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Castings;

/// <summary>A tested property as it is shown.</summary>
internal static class PropertyText
{
    private static readonly string[] Forms = ["I", "II", "III", "IV", "V", "VI"];

    /// <summary>A dash where there is none; graphite forms in the numerals of ISO 945-1.</summary>
    public static string Show(CastProperty property, double? value) => value is not { } number ? "–"
        : property == CastProperty.GraphiteForm && number is >= 1 and <= 6 && number == Math.Floor(number) ? Forms[(int)number - 1]
        : NumberText.ShowAtLeast(number, 0);

    /// <summary>Unit of what is typed; empty where it has none.</summary>
    public static string Unit(CastProperty property) => property switch
    {
        CastProperty.TensileMPa or CastProperty.ProofMPa => "MPa",
        CastProperty.HardnessHbw => "HBW",
        CastProperty.ImpactMeanJ or CastProperty.ImpactSingleJ => "J",
        CastProperty.NodulesPerMm2 => "1/mm²",
        CastProperty.GraphiteForm or CastProperty.GraphiteSize => "",
        _ => "%",
    };
}
