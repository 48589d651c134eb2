using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Solving;

/// <summary>The solver could not tell whether a program has a solution, at no tolerance that was tried.</summary>
internal sealed class UndecidedException() : InvalidOperationException("The solver failed to decide the program.");

/// <summary>Where an undecided program is one question of many, it counts like one that ran out of time.</summary>
internal static class Undecided
{
    public static Solution OrWithout(Func<Solution> solve)
    {
        try
        {
            return solve();
        }
        catch (UndecidedException)
        {
            return Solution.Without(PlanStatus.TimeLimit) with { End = SearchEnd.Undecided };
        }
    }
}
