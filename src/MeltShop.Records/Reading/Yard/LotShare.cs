namespace MeltShop.Records.Reading.Yard;

/// <summary>What is taken from a lot.</summary>
/// <param name="Lot">Its name; null for what lies there outside of every lot.</param>
/// <param name="Kg">Above zero.</param>
public sealed record LotShare(string? Lot, double Kg)
{
    /// <summary>Under this nothing is weighed, kg.</summary>
    private const double Nothing = 0.01;

    /// <summary>
    /// A mass by lots: the oldest first and each as far as it goes, as a yard uses them up (common practice, no source). What no lot holds comes
    /// last, without a name.
    /// </summary>
    /// <param name="lots">Of one material, the oldest first.</param>
    /// <param name="kg">What is to be taken.</param>
    /// <returns>Nothing where no lot is there, or nothing is to be taken.</returns>
    public static IReadOnlyList<LotShare> Of(IReadOnlyList<LotView> lots, double kg)
    {
        ArgumentNullException.ThrowIfNull(lots);
        var shares = new List<LotShare>();
        foreach (var lot in lots.Where(lot => lot.IsThere))
        {
            if (kg < Nothing) break;
            shares.Add(new(lot.Name, Math.Min(kg, lot.LeftKg)));
            kg -= lot.LeftKg;
        }

        if (shares.Count > 0 && kg >= Nothing) shares.Add(new(null, kg));
        return shares;
    }
}
