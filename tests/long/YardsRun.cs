using MeltShop.Charging.Plans;
using MeltShop.Charging.Tests.Support;

namespace MeltShop.Long;

/// <summary>Generated yards, seed by seed, against GLPK as a separate program: the same feasibility, cost to 1e-6, to 1e-5 under confidence.</summary>
internal static class YardsRun
{
    public static async Task<bool> Run()
    {
        var continuous = await Compare(1, 300, pieces: false);
        var pieces = await Compare(1, 40, pieces: true);
        var confident = await Compare(1, 60, pieces: false, confidence: 90);
        var confidentPieces = await Compare(1, 60, pieces: true, confidence: 90);
        return continuous && pieces && confident && confidentPieces;
    }

    private static async Task<bool> Compare(int firstSeed, int count, bool pieces, double confidence = 50)
    {
        var (agree, infeasible, unjudged) = (0, 0, 0);
        for (var seed = firstSeed; seed < firstSeed + count; seed++)
        {
            try
            {
                var yard = await YardComparison.Of(seed, pieces, CancellationToken.None, confidence);
                infeasible += yard.Plan.Status == PlanStatus.Infeasible ? 1 : 0;
                agree += yard.Agrees ? 1 : 0;
                if (!yard.Agrees) Console.WriteLine(yard);
            }
            catch (GlpkGaveUpException)
            {
                unjudged++;
            }
        }

        Console.WriteLine($"{(pieces ? "with pieces" : "continuous")} at {confidence} %, seeds {firstSeed} to {firstSeed + count - 1}: {agree} of {count} agree, {infeasible} impossible, at {unjudged} GLPK gave up");
        return agree + unjudged == count && unjudged <= count / 4;
    }
}
