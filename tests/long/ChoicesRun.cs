using MeltShop.Charging.Tests.Support;

namespace MeltShop.Long;

/// <summary>Plans to choose from, price ranges and purchases of generated yards, seed by seed, against GLPK.</summary>
internal static class ChoicesRun
{
    public static async Task<bool> Run()
    {
        var (faults, possible, ends, bought, unjudged) = (new List<string>(), 0, 0, 0, 0);
        for (var seed = 1; seed <= 300; seed++)
        {
            // Counting materials takes GLPK long in a large yard.
            var withFewest = seed <= 60 && RandomYard.Charge(seed).Materials.Count <= 30;
            if (await ChoiceComparison.Of(seed, withFewest, CancellationToken.None) is { } found)
            {
                possible++;
                faults.AddRange(found);
            }

            // Under confidence GLPK needs a program for each round of planes.
            if (seed <= 60)
            {
                var withPieces = seed % 2 == 0;
                try
                {
                    var confident = await ChoiceComparison.Of(seed, withFewest: seed <= 6, CancellationToken.None, withPieces, confidence: 80);
                    possible += confident is null ? 0 : 1;
                    faults.AddRange((confident ?? []).Select(fault => $"under confidence, {fault}"));
                }
                catch (GlpkGaveUpException)
                {
                    unjudged++;
                }
            }

            var lack = await PurchaseComparison.Of(seed, CancellationToken.None);
            bought += lack.Materials;
            faults.AddRange(lack.Faults);
            if (seed > 60) continue;
            var ranges = await PriceRangeComparison.Of(seed, 80, CancellationToken.None);
            ends += ranges.Ends;
            faults.AddRange(ranges.Faults);
        }

        foreach (var fault in faults) Console.WriteLine(fault);
        Console.WriteLine($"choices of {possible} yards, {ends} ends of price ranges, {bought} purchases: {faults.Count} faults; at {unjudged} GLPK gave up");
        return faults.Count == 0 && unjudged <= 15 && possible > 0 && ends > 0 && bought > 0;
    }
}
