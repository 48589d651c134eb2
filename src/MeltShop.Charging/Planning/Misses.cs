using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Route;

namespace MeltShop.Charging.Planning;

/// <summary>What a charge misses of what was asked, by the balance of the metallurgy room.</summary>
internal static class Misses
{
    /// <summary>Percentage points, and share of the melt.</summary>
    private const double Tolerance = 1e-6;

    public static IEnumerable<Miss> Of(MeltResult result) =>
        OfMasses(result).Concat(OfMaterials(result)).Concat(OfGroups(result)).Concat(OfVolumes(result)).Concat(OfLimits(result));

    /// <summary>Whether a miss was weighed in already, so that no plan can be without it.</summary>
    public static bool Stands(Miss miss, Melt melt) => miss is { IsMax: true } && miss.Value <= Tolerance * melt.ScaleKg + miss.Kind switch
    {
        MissKind.MaterialKg => melt.Columns.Where(c => c.Name == miss.Name).Sum(c => c.WeighedKg),
        MissKind.GroupKg => melt.Groups.Where(g => g.Name == miss.Name).Sum(g => GroupRows.WeighedKg(melt, g)),
        MissKind.Volume => VolumeRows.WeighedM3(melt),
        _ => double.NegativeInfinity,
    };

    private static IEnumerable<Miss> OfMasses(MeltResult result)
    {
        var (melt, room) = (result.Melt, Tolerance * result.Melt.ScaleKg);
        foreach (var miss in Outside(MissKind.LiquidKg, "", result.Metal.Kg, melt.LeastLiquidKg, melt.MostLiquidKg, room)) yield return miss;
        foreach (var miss in Outside(MissKind.WeighedKg, "", result.WeighedKg, null, melt.MostWeighedKg, room)) yield return miss;
    }

    private static IEnumerable<Miss> OfMaterials(MeltResult result)
    {
        var room = Tolerance * result.Melt.ScaleKg;
        for (var j = 0; j < result.Kilograms.Length; j++)
        {
            var (column, kg) = (result.Melt.Columns[j], result.Kilograms[j]);
            foreach (var miss in Outside(MissKind.AlreadyIn, column.Name, kg, column.WeighedKg, null, room)) yield return miss;
            if (column.Material is not { } material)
            {
                foreach (var miss in Outside(MissKind.MaterialKg, column.Name, kg, column.LeastKg, column.MostKg, room)) yield return miss;
                continue;
            }

            foreach (var miss in Outside(MissKind.MaterialKg, column.Name, kg, material.MinKg, material.MaxKg, room)) yield return miss;
            // More weighed in than there was shows that the stock was wrong: nothing of the charge is.
            if (kg > column.WeighedKg + room)
                foreach (var miss in Outside(MissKind.Stock, column.Name, kg, null, material.AvailableKg, room)) yield return miss;
            foreach (var miss in Share(MissKind.MaterialPercent, column.Name, kg, result, material.MinPercent, material.MaxPercent)) yield return miss;
            if (material.PieceKg is > 0 and var piece)
                foreach (var miss in Pieces(column, kg, piece)) yield return miss;
        }
    }

    private static IEnumerable<Miss> Pieces(MeltColumn column, double kg, double piece)
    {
        var whole = column.WeighedKg + piece * Math.Round((kg - column.WeighedKg) / piece);
        if (Math.Abs(kg - whole) > Tolerance * piece) yield return new(MissKind.Pieces, column.Name, kg > whole, whole, kg);
    }

    private static IEnumerable<Miss> OfGroups(MeltResult result)
    {
        foreach (var group in result.Melt.Groups)
        {
            var kg = result.Sum(c => GroupRows.Holds(group, c) ? 1 : 0);
            foreach (var miss in Outside(MissKind.GroupKg, group.Name, kg, group.MinKg, group.MaxKg, Tolerance * result.Melt.ScaleKg)) yield return miss;
            foreach (var miss in Share(MissKind.GroupPercent, group.Name, kg, result, group.MinPercent, group.MaxPercent)) yield return miss;
        }
    }

    private static IEnumerable<Miss> OfVolumes(MeltResult result)
    {
        var m3 = result.Sum(VolumeRows.M3PerKg);
        return result.Melt.Volumes.SelectMany(v => Outside(MissKind.Volume, v.Name, m3, null, v.MostM3, Tolerance * v.MostM3));
    }

    private static IEnumerable<Miss> OfLimits(MeltResult result)
    {
        if (result.Metal.Kg <= 0) yield break;
        for (var i = 0; i < result.Melt.Limits.Count; i++)
        {
            QuantityLimit limit = result.Melt.Limits[i];
            var inward = limit.Margin + result.Scatters[i];
            var moved = FurnaceWindow.ToOwnPercent(limit.Quantity.Name, result.Values[i], result.Analysis);
            foreach (var miss in Outside(MissKind.Quantity, limit.Quantity.Name, result.Values[i], limit.Min + inward, limit.Max - inward, Tolerance))
                yield return miss with { Value = miss.Value + moved, Asked = miss.Asked + moved, Inward = inward, HeldMargin = limit.HeldMargin };
        }
    }

    /// <summary>A share is held to a millionth of the melt, in kilograms, and told in percent.</summary>
    private static IEnumerable<Miss> Share(MissKind kind, string name, double kg, MeltResult result, double minPercent, double maxPercent)
    {
        var weighed = result.WeighedKg;
        if (weighed <= 0) return [];
        return Outside(kind, name, 100 * kg / weighed, minPercent, maxPercent, 100 * Tolerance * result.Melt.ScaleKg / weighed);
    }

    private static IEnumerable<Miss> Outside(MissKind kind, string name, double value, double? least, double? most, double room)
    {
        if (value < least - room) yield return new(kind, name, IsMax: false, least!.Value, value);
        if (value > most + room) yield return new(kind, name, IsMax: true, most!.Value, value);
    }
}
