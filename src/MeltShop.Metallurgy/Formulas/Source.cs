namespace MeltShop.Metallurgy.Formulas;

/// <summary>Where a formula or a figure comes from, and how far that can be trusted.</summary>
/// <param name="Key">Key by which docs and records name it, for example <c>heine</c>.</param>
/// <param name="Citation">Author, title, edition, year.</param>
/// <param name="Standing">How the figure was obtained.</param>
public sealed record Source(string Key, string Citation, Standing Standing)
{
    /// <summary>The citation with its standing said aloud wherever it is less than a reading.</summary>
    public override string ToString() => Standing switch
    {
        Standing.Remembered => $"{Citation} (from memory)",
        Standing.Practice => $"{Citation} (common practice, no source)",
        Standing.Derived => $"{Citation} (derived)",
        _ => Citation,
    };
}
