namespace MeltShop.Charging.Planning;

/// <summary>No plan is shown as meeting what it does not meet: the metal it makes is held against everything that was asked.</summary>
internal static class MeltCheck
{
    /// <summary>Percentage points, and share of the melt.</summary>
    private const double Tolerance = 1e-6;

    /// <exception cref="InvalidOperationException">The plan misses something by more than 1e-6: a fault of this room.</exception>
    public static void Require(MeltResult result)
    {
        var missed = Missed(result).FirstOrDefault();
        if (missed is not null) throw new InvalidOperationException($"The plan that was found does not hold: {missed}.");
    }

    public static IEnumerable<string> Missed(MeltResult result)
    {
        var (melt, room) = (result.Melt, Tolerance * result.Melt.ScaleKg);
        if (Outside(result.Metal.Kg, melt.LeastLiquidKg, melt.MostLiquidKg, room)) yield return $"liquid mass {result.Metal.Kg} kg";
        if (result.WeighedKg > melt.MostWeighedKg + room) yield return $"weighed mass {result.WeighedKg} kg";
        for (var j = 0; j < result.Kilograms.Length; j++)
        {
            var (column, kg) = (melt.Columns[j], result.Kilograms[j]);
            if (Outside(kg, column.LeastKg, column.MostKg, room)) yield return $"{column.Name} {kg} kg";
            if (column.Material is not { } material) continue;
            if (Outside(kg, material.MinPercent / 100 * result.WeighedKg, material.MaxPercent / 100 * result.WeighedKg, room)) yield return $"share of {column.Name}";
            if (material.PieceKg is > 0 and var piece && Math.Abs(kg / piece - Math.Round(kg / piece)) > Tolerance) yield return $"pieces of {column.Name}";
        }

        if (result.Metal.Kg <= 0) yield break;
        for (var i = 0; i < melt.Limits.Count; i++)
        {
            var (limit, value, inward) = (melt.Limits[i], result.Values[i], melt.Limits[i].Margin + result.Scatters[i]);
            if (Outside(value, limit.Min + inward, limit.Max - inward, Tolerance)) yield return $"{limit.Quantity.Name} {value}";
        }
    }

    private static bool Outside(double value, double? least, double? most, double room) => value < least - room || value > most + room;
}
