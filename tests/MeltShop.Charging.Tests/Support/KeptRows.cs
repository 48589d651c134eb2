using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;

namespace MeltShop.Charging.Tests.Support;

/// <summary>Whether a charge keeps all that its problem asks, by the words of the calculation contract, row by row and without a solver.</summary>
internal static class KeptRows
{
    /// <summary>Share of the melt, and percentage points: what plans may leave over.</summary>
    private const double Tolerance = 1e-8;

    public static bool Keeps(ChargeProblem problem, IEnumerable<PlanLine> lines)
    {
        var weighed = lines.ToDictionary(l => l.Code, l => l.Kg);
        double[] kilograms = [.. problem.Materials.Select(m => weighed.GetValueOrDefault(m.Code))];
        var (room, liquidKg, weighedKg) = (Tolerance * problem.MeltKg, problem.Heel.Kg + problem.Materials.Zip(kilograms).Sum(m => Glpk.Liquid(m.First) * m.Second), kilograms.Sum());
        return IsBetween(liquidKg, problem.MeltKg, problem.MeltKg + problem.MeltToleranceKg, room)
            && problem.Materials.Zip(kilograms).All(m => Keeps(m.First, m.Second, weighedKg, room))
            && problem.Limits.All(l => !IsMissed(l, l.Min, -1) && !IsMissed(l, l.Max, 1))
            && !GlpkPlanes.Missed(problem, kilograms).Any();

        bool IsMissed(QuantityLimit limit, double? bound, int sign)
        {
            if (bound is not { } asked) return false;
            var (coefficients, right) = Glpk.Limit(problem, limit, asked);
            return sign * (coefficients.Zip(kilograms).Sum(c => c.First * c.Second) - right) > Tolerance * liquidKg;
        }
    }

    private static bool Keeps(ChargeMaterial material, double kg, double weighedKg, double room) =>
        IsBetween(kg, material.MinKg, Math.Min(material.MaxKg ?? kg, material.AvailableKg ?? kg), room)
        && IsBetween(kg, material.MinPercent / 100 * weighedKg, material.MaxPercent / 100 * weighedKg, room)
        && (material.PieceKg is not { } piece || Math.Abs(kg - piece * Math.Round(kg / piece)) <= room);

    private static bool IsBetween(double value, double least, double most, double room) => value >= least - room && value <= most + room;
}
