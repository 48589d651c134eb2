using MeltShop.Charging.Formulation;
using MeltShop.Charging.Planning;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;

namespace MeltShop.Charging;

/// <summary>A charge that a person has made or changed: it is checked and not changed.</summary>
public static class ChargeCheck
{
    /// <summary>What comes of a charge, and what it misses.</summary>
    /// <param name="problem">What was asked.</param>
    /// <param name="kilograms">The whole charge by code, weighed kg, what is weighed in already included; a material that is not named is not charged.</param>
    /// <exception cref="ArgumentException">A code that the problem does not hold, or a mass that is negative or not finite.</exception>
    public static ChargeEvaluation Of(ChargeProblem problem, IReadOnlyDictionary<string, double> kilograms) => Of(ResultOf(problem, kilograms));

    internal static MeltResult ResultOf(ChargeProblem problem, IReadOnlyDictionary<string, double> kilograms)
    {
        ArgumentNullException.ThrowIfNull(kilograms);
        var melt = ChargeOptimiser.MeltOf(problem);
        var codes = problem.Materials.Select(m => m.Code).ToHashSet();
        foreach (var (code, kg) in kilograms)
        {
            if (!codes.Contains(code)) throw new ArgumentException($"No material of the problem is called {code}.", nameof(kilograms));
            if (!double.IsFinite(kg) || kg < 0) throw new ArgumentException($"{kg} kg of {code} is no mass.", nameof(kilograms));
        }

        return new MeltResult(melt, [.. problem.Materials.Select(m => kilograms.GetValueOrDefault(m.Code))]);
    }

    internal static ChargeEvaluation Of(MeltResult result)
    {
        var fresh = result.Metal.Kg - result.Melt.Start.Kg;
        return new()
        {
            Misses = [.. Misses.Of(result)],
            Costs = result.Costs,
            CostPerTonne = fresh > 0 ? 1000 * result.Costs.Total / fresh : 0,
            LiquidKg = result.Metal.Kg,
            Lines = [.. PlanWriter.Lines(result)],
            Analysis = result.Analysis,
            AssumedZero = PlanWriter.AssumedZero(result.Melt),
            Limits = [.. result.Melt.Limits.Select((_, i) => PlanWriter.Limit(result, i))],
            Groups = [.. result.Melt.Groups.Select(g => Group(result, g))],
            Volumes = [.. result.Melt.Volumes.Select(v => Volume(result, v))],
        };
    }

    private static GroupOutcome Group(MeltResult result, GroupLimit group)
    {
        var kg = result.Sum(c => GroupRows.Holds(group, c) ? 1 : 0);
        return new(group.Name, kg, result.WeighedKg > 0 ? 100 * kg / result.WeighedKg : 0);
    }

    private static VolumeOutcome Volume(MeltResult result, VolumeLimit room) => new(
        room.Name,
        result.Sum(VolumeRows.M3PerKg),
        room.MostM3,
        [.. result.Melt.Columns.Where((c, j) => result.Kilograms[j] > 0 && c.Material is { BulkDensityTonnesPerM3: null }).Select(c => c.Name)]);
}
