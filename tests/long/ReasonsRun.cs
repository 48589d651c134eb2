using MeltShop.Charging.Tests.Support;

namespace MeltShop.Long;

/// <summary>
/// What a plan says of itself in generated yards, seed by seed: marginal costs and prices to enter against small changes, what masses, shares and rooms cost
/// likewise, what clashes against GLPK, bounds with scatter against drawn heats.
/// </summary>
internal static class ReasonsRun
{
    public static async Task<bool> Run()
    {
        var passed = true;
        foreach (var (confidence, firstSeed, yards) in new[] { (50.0, 1, 300), (90, 101, 60), (99, 201, 60) })
        {
            var seeds = Enumerable.Range(firstSeed, yards).ToList();
            passed &= Told("marginal costs", seeds, confidence, [.. seeds.Select(seed => MarginalCostComparison.OfBounds(seed, confidence, CancellationToken.None))]);
            passed &= Told("prices to enter", seeds, confidence, [.. seeds.Select(seed => MarginalCostComparison.OfPricesToEnter(seed, confidence, CancellationToken.None))]);
            passed &= Told("bounds of masses, shares and rooms", seeds, confidence, [.. seeds.Select(seed => BoundComparison.Of(seed, confidence, CancellationToken.None)).Select(yard => (yard.Compared.Values.Sum(), yard.Faults))]);
            if (confidence > 50) passed &= Told("bounds with scatter", seeds, confidence, [.. seeds.Select(seed => ScatterComparison.Of(seed, confidence, CancellationToken.None))]);
        }

        foreach (var (confidence, firstSeed, yards) in new[] { (50.0, 1, 600), (99, 201, 120) })
        {
            var (seeds, found) = (Enumerable.Range(firstSeed, yards).ToList(), new List<(int, IReadOnlyList<string>)>());
            foreach (var seed in seeds) found.Add(await ConflictComparison.Of(seed, confidence, CancellationToken.None));
            passed &= Told("limits that clash", seeds, confidence, found);
        }

        return passed;
    }

    private static bool Told(string what, List<int> seeds, double confidence, List<(int Compared, IReadOnlyList<string> Faults)> found)
    {
        var (compared, faults) = (found.Sum(yard => yard.Compared), found.SelectMany(yard => yard.Faults).ToList());
        foreach (var fault in faults) Console.WriteLine($"{what}, {fault}");
        Console.WriteLine($"{what} at {confidence} %, seeds {seeds[0]} to {seeds[^1]}: {compared} compared, {faults.Count} faults");
        return compared > 0 && faults.Count == 0;
    }
}
