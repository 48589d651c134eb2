using MeltShop.Charging.Tests.Support;

namespace MeltShop.Long;

/// <summary>Plans to choose from, price ranges and purchases of generated yards, seed by seed, against GLPK.</summary>
internal static class ChoicesRun
{
    public static async Task<bool> Run()
    {
        var (faults, unjudged, possible, ends, bought) = (new List<string>(), new List<string>(), 0, 0, 0);
        for (var seed = 1; seed <= 300; seed++)
        {
            // Counting materials takes GLPK long in a large yard.
            var withFewest = seed <= 60 && RandomYard.Charge(seed).Materials.Count <= 30;
            Add(await ChoiceComparison.Of(seed, withFewest, CancellationToken.None), "");

            // Under confidence GLPK needs a program for each round of planes.
            var withPieces = seed % 2 == 0;
            if (seed <= 60) Add(await ChoiceComparison.Of(seed, withFewest: seed <= 6, CancellationToken.None, withPieces, confidence: 80), "under confidence, ");

            var lack = await PurchaseComparison.Of(seed, CancellationToken.None);
            bought += lack.Materials;
            faults.AddRange(lack.Faults);
            if (seed > 60) continue;
            var ranges = await PriceRangeComparison.Of(seed, 80, CancellationToken.None);
            ends += ranges.Ends;
            faults.AddRange(ranges.Faults);
        }

        foreach (var line in faults.Concat(unjudged)) Console.WriteLine(line);
        Console.WriteLine($"choices of {possible} yards, {ends} ends of price ranges, {bought} purchases: {faults.Count} faults; {unjudged.Count} plans that GLPK gives no second opinion on");
        return faults.Count == 0 && unjudged.Count <= 15 && possible > 0 && ends > 0 && bought > 0;

        void Add(ChoiceComparison? found, string where)
        {
            if (found is null) return;
            possible++;
            faults.AddRange(found.Faults.Select(fault => where + fault));
            unjudged.AddRange(found.Unjudged.Select(plan => where + plan));
        }
    }
}
