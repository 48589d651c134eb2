using MeltShop.Charging;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;

namespace MeltShop.Operations.Charging;

/// <summary>
/// What is in the furnace, held against what was asked as if nothing more came. Masses and shares count as kept where they are as near as a magnet weighs
/// scrap; of the iron's own limits nothing is given away.
/// </summary>
internal static class WhatIsIn
{
    /// <param name="begun">What was asked, with what is in.</param>
    /// <param name="taken">What a person who made the charge by hand took upon themselves to miss.</param>
    public static RestAnswer Of(ChargeProblem begun, IReadOnlySet<(MissKind Kind, string Name, bool IsMax)> taken)
    {
        var near = HandCharge.Near(begun);
        var (asked, bare) = (Judged(near), Judged(RestQuestion.WithoutMargin(near)));
        var answer = asked.Holds ? new RestAnswer(RestStanding.Kept, asked)
            : RestQuestion.Misses(asked).IsSubsetOf(taken) ? new(RestStanding.AsMade, asked)
            : new(bare.Holds ? RestStanding.WithoutMargin : RestStanding.Missed, bare);
        return answer with { ShortKg = Math.Max(0, begun.MeltKg - asked.LiquidKg) };
    }

    private static ChargeEvaluation Judged(ChargeProblem problem)
    {
        var made = BathMasses.Together(ChargeCheck.Of(problem, problem.WeighedKg));
        return made with { Misses = [.. made.Misses.Where(miss => miss.Kind is MissKind.Quantity or MissKind.LiquidKg || miss.By > Math.Abs(miss.Asked) * RestQuestion.NearPercent / 100)] };
    }
}
