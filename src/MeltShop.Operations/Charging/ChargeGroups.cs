using MeltShop.Charging.Problems;
using MeltShop.Operations.Checking;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;

namespace MeltShop.Operations.Charging;

/// <summary>Kinds of material that a charge may bound together: by what they are, and those with zinc on them.</summary>
public static class ChargeGroups
{
    public const string Galvanised = "galvanised";

    private static readonly MaterialKind[] Kinds = [MaterialKind.Returns, MaterialKind.SteelScrap, MaterialKind.CastScrap, MaterialKind.PigIron];

    /// <summary>All that can be bounded.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Kinds.Select(kind => kind.ToString()), Galvanised];

    public static bool Holds(string group, MaterialView material)
    {
        ArgumentNullException.ThrowIfNull(material);
        return group == Galvanised ? material.Cautions.Contains(Galvanised) : material.Kind.ToString() == group;
    }

    internal static void Check(this FieldCheck fields, IReadOnlyList<GroupChoice> groups)
    {
        foreach (var group in groups)
        {
            var path = $"groups.{group.Group}";
            if (!Names.Contains(group.Group)) fields.Add(path, "group.unknown", group.Group);
            if (group.MinKg is { } min) fields.MassOrZero($"{path}.minKg", min);
            if (group.MaxKg is { } max) fields.MassOrZero($"{path}.maxKg", max);
            fields.Percent($"{path}.minPercent", group.MinPercent);
            fields.Percent($"{path}.maxPercent", group.MaxPercent);
            if (group.MinKg > group.MaxKg) fields.Add($"{path}.minKg", "bounds.crossed", group.MinKg, group.MaxKg!);
            if (group.MinPercent > group.MaxPercent) fields.Add($"{path}.minPercent", "bounds.crossed", group.MinPercent, group.MaxPercent!);
        }

        // Galvanised is steel as well, so that its share does not add up with the others.
        var least = groups.Where(group => group.Group != Galvanised && group.MinPercent > 0).ToList();
        if (least.Sum(group => group.MinPercent!.Value) is > 100 and var sum) fields.Add($"groups.{least[^1].Group}.minPercent", "shares.over100", sum);
    }

    /// <summary>The groups with the materials that can be charged; one without any is told where something of it is asked for.</summary>
    internal static List<GroupLimit> Of(IReadOnlyList<MaterialView> yard, IReadOnlyList<ChargeMaterial> materials, IReadOnlyList<GroupChoice> choices, FieldCheck fields)
    {
        var groups = new List<GroupLimit>();
        foreach (var choice in choices)
        {
            List<string> codes = [.. materials.Select(material => material.Code).Where(code => yard.Any(item => item.Code == code && Holds(choice.Group, item)))];
            if (codes.Count > 0)
            {
                groups.Add(new GroupLimit
                {
                    Name = choice.Group, Codes = codes,
                    MinKg = choice.MinKg ?? 0, MaxKg = choice.MaxKg, MinPercent = choice.MinPercent ?? 0, MaxPercent = choice.MaxPercent ?? 100,
                });
            }
            else if (choice.MinKg > 0 || choice.MinPercent > 0)
            {
                fields.Add($"groups.{choice.Group}.{(choice.MinKg > 0 ? "minKg" : "minPercent")}", "group.empty");
            }
        }

        return groups;
    }
}
