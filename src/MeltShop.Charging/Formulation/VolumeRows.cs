using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;

namespace MeltShop.Charging.Formulation;

/// <summary>Rows of the room for the cold charge, as a share of that room. What is weighed in already stands.</summary>
internal static class VolumeRows
{
    public static IEnumerable<Row> Of(Melt melt, double[] unitKg)
    {
        foreach (var room in melt.Volumes)
        {
            double[] shares = [.. melt.Columns.Select((c, j) => M3PerKg(c) * unitKg[j] / room.MostM3)];
            var weighed = WeighedM3(melt) / room.MostM3;
            yield return new($"room: {room.Name}", shares, double.NegativeInfinity, Math.Max(1, weighed))
            {
                Asked = new(MissKind.Volume, room.Name, null, weighed > 1 ? null : room.MostM3, 1 / room.MostM3),
            };
        }
    }

    /// <summary>Volume of a kilogram; 0 where the bulk density is not known.</summary>
    public static double M3PerKg(MeltColumn column) => column.Material?.BulkDensityTonnesPerM3 is { } density ? 1 / (1000 * density) : 0;

    public static double WeighedM3(Melt melt) => melt.Columns.Sum(c => M3PerKg(c) * c.WeighedKg);
}
