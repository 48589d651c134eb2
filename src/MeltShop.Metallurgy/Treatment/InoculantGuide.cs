using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Treatment;

/// <summary>What the active element of an inoculant is used for.</summary>
/// <param name="Kind">Active element or elements.</param>
/// <param name="LeastPercent">Least of it in the inoculant, %.</param>
/// <param name="MostPercent">Most of it in the inoculant, %.</param>
/// <param name="Use">Key of the use.</param>
/// <param name="FadeMinutes">First entry for <see cref="InoculationFade.Minutes"/>; assumed, null where not even that.</param>
/// <param name="Standing">Whether the percents were read or are remembered.</param>
public sealed record InoculantGuide(string Kind, double LeastPercent, double MostPercent, string Use, double? FadeMinutes, Standing Standing)
{
    /// <summary>Where the uses come from.</summary>
    public static Source Source => Bibliography.Inoculants;

    /// <summary>More aluminium than this in an inoculant makes pinholes in green sand, %.</summary>
    public const double MostAluminiumPercent = 1.5;

    /// <summary>The kinds, all on ferrosilicon.</summary>
    public static IReadOnlyList<InoculantGuide> All { get; } =
    [
        new("Ca, Al", 0.5, 1.5, "low-sulphur-grey-and-medium-section-ductile", 5, Standing.Read),
        new("Ba", 1, 3, "long-fade-heavy-section", 8, Standing.Remembered),
        new("Sr", 1, 1, "grey-with-sulphur-thin-section", 5, Standing.Read),
        new("Zr", 1, 5, "fade-resistant-binds-nitrogen", 8, Standing.Remembered),
        new("Bi", 0.5, 1.1, "very-high-nodule-count", null, Standing.Read),
        new("Ce, La", 0.5, 2, "nuclei-and-trace-control", null, Standing.Remembered),
    ];
}
