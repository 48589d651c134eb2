using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;

namespace MeltShop.Charging.Formulation;

/// <summary>Rows of several materials together. A mass that is weighed in already stands, whatever was asked.</summary>
internal static class GroupRows
{
    public static IEnumerable<Row> OfMass(Melt melt, Func<Func<MeltColumn, double>, double[]> weighed)
    {
        foreach (var group in melt.Groups)
        {
            var sum = weighed(c => Holds(group, c) ? 1 : 0);
            if (group.MinKg > 0)
            {
                yield return new($"least mass: {group.Name}", sum, group.MinKg / melt.ScaleKg, double.PositiveInfinity)
                {
                    Asked = new(MissKind.GroupKg, group.Name, group.MinKg, null, 1 / melt.ScaleKg),
                };
            }

            if (group.MaxKg is not { } most) continue;
            var weighedKg = WeighedKg(melt, group);
            yield return new($"greatest mass: {group.Name}", sum, double.NegativeInfinity, Math.Max(most, weighedKg) / melt.ScaleKg)
            {
                Asked = new(MissKind.GroupKg, group.Name, null, most < weighedKg ? null : most, 1 / melt.ScaleKg),
            };
        }
    }

    public static IEnumerable<Row> OfShare(Melt melt, Func<Func<MeltColumn, double>, double[]> weighed)
    {
        foreach (var group in melt.Groups)
        {
            if (group.MinPercent > 0)
                yield return new($"least share: group {group.Name}", Share(group.MinPercent), 0, double.PositiveInfinity) { Asked = Asked(group.MinPercent, null) };
            if (group.MaxPercent < 100)
                yield return new($"greatest share: group {group.Name}", Share(group.MaxPercent), double.NegativeInfinity, 0) { Asked = Asked(null, group.MaxPercent) };

            Asked Asked(double? least, double? most) => new(MissKind.GroupPercent, group.Name, least, most, 0.01 / melt.ScaleKg);

            double[] Share(double percent) => weighed(c => (Holds(group, c) ? 1 : 0) - percent / 100);
        }
    }

    public static bool Holds(GroupLimit group, MeltColumn column) => column.Material is { } material && group.Codes.Contains(material.Code);

    public static double WeighedKg(Melt melt, GroupLimit group) => melt.Columns.Where(c => Holds(group, c)).Sum(c => c.WeighedKg);
}
