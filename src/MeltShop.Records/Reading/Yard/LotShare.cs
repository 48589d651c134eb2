namespace MeltShop.Records.Reading.Yard;

/// <summary>What is taken from a lot or a bin.</summary>
/// <param name="Lot">Its name; null for what lies there outside of every lot.</param>
/// <param name="Kg">Above zero.</param>
/// <param name="Bin">Where it lies; null where nobody said.</param>
public sealed record LotShare(string? Lot, double Kg, string? Bin = null)
{
    /// <summary>Under this nothing is weighed, kg.</summary>
    private const double Nothing = 0.01;

    /// <summary>
    /// A mass by lots: the oldest first and each as far as it goes, as a yard uses them up (common practice, no source). What no lot holds comes
    /// last, without a name.
    /// </summary>
    /// <param name="material">Its lots are the oldest first.</param>
    /// <param name="kg">What is to be taken.</param>
    /// <returns>Nothing where neither a lot is there nor a bin is known, or nothing is to be taken.</returns>
    public static IReadOnlyList<LotShare> Of(MaterialView material, double kg)
    {
        ArgumentNullException.ThrowIfNull(material);
        var shares = new List<LotShare>();
        foreach (var lot in material.Lots.Where(lot => lot.IsThere))
        {
            if (kg < Nothing) break;
            shares.Add(new(lot.Name, Math.Min(kg, lot.LeftKg), lot.Bin));
            kg -= lot.LeftKg;
        }

        if ((shares.Count > 0 || material.PileBin is not null) && kg >= Nothing) shares.Add(new(null, kg, material.PileBin));
        return shares;
    }
}
