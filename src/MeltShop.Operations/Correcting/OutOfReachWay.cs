using MeltShop.Charging.Problems;

namespace MeltShop.Operations.Correcting;

/// <summary>What would have to be otherwise for a bath to come into its window.</summary>
public enum WayIn
{
    /// <summary>Inside the limits as they are, not by the margin to each.</summary>
    LessMargin,

    /// <summary>Iron is tapped off first, so that there is room.</summary>
    TapOff,

    /// <summary>A furnace that holds more.</summary>
    MoreRoom,

    /// <summary>More in the yard than lies there.</summary>
    MoreStock,
}

/// <summary>The ways that were found, and those of which the search came to no end: of them nothing is known.</summary>
public sealed record WaysIn(IReadOnlyList<OutOfReachWay> Found, IReadOnlyList<WayIn> NotDecided);

/// <summary>A way into the window that is barred now, in kilograms and minutes: whoever decides to pig a bath wants to know what saving it would take.</summary>
/// <param name="TapOffKg">To tap off first, kg.</param>
/// <param name="AddedKg">To add, kg.</param>
/// <param name="OverKg">How much more than the furnace holds there would be, kg; 0 where it holds it.</param>
/// <param name="Minutes">To bring the bath back to its temperature at rated power; null where the heat of an addition is not known.</param>
/// <param name="Short">Materials that would be needed in a greater mass than lies in the yard, kg missing by code.</param>
public sealed record OutOfReachWay(WayIn Way, double TapOffKg, double AddedKg, double OverKg, double? Minutes, IReadOnlyDictionary<string, double> Short)
{
    /// <summary>The most of a bath that counts as correcting it; beyond that it is a new charge.</summary>
    private const double MostTappedShare = 0.9;

    /// <summary>A tonne added weighs 1000: no more is tapped off than makes the room.</summary>
    private const double TapOffWeight = 100_000;

    /// <summary>A solver's last digit over the brim is none, kg.</summary>
    private const double Nothing = 1e-6;

    /// <summary>The ways for a bath that cannot be corrected as things are, of each kind the one with the least to tap off and then to add.</summary>
    public static WaysIn Of(CorrectionFacts facts, CorrectionChoice choice, CancellationToken ct)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(choice);
        var least = choice with { Goal = CorrectionGoal.Kilograms, LeastAdditionKg = null, NearnessPrice = null };
        if (CorrectionQuestion.Build(facts, least).Problem is not { } problem) return new([], []);
        // From the windows anew: the rows of a quantity that is not linear are made for its margin.
        var bare = facts.View.Grade with { Windows = [.. facts.View.Grade.Windows.Select(w => w with { Margin = 0 })] };
        var notDecided = new List<WayIn>();
        OutOfReachWay?[] ways =
        [
            Way(WayIn.LessMargin, CorrectionQuestion.Build(facts, least, bare).Problem ?? problem),
            Way(WayIn.TapOff, problem with { MaxTapOffKg = MostTappedShare * problem.Bath.Kg, TapOffCostPerTonne = TapOffWeight }),
            Way(WayIn.MoreRoom, problem with { CapacityKg = null }),
            Way(WayIn.MoreStock, problem with { Additions = [.. problem.Additions.Select(a => a with { AvailableKg = null })] }),
        ];
        return new([.. ways.OfType<OutOfReachWay>()], notDecided);

        OutOfReachWay? Way(WayIn way, CorrectionProblem wider)
        {
            var found = CorrectionProposal.For(facts, least, wider, ct);
            if (!found.IsReached && !found.IsImpossible) notDecided.Add(way);
            if (!found.IsReached) return null;
            var lines = found.Plan.Plan.Lines;
            var over = found.Plan.Plan.LiquidKg - facts.View.Heat.CapacityKg;
            var stock = problem.Additions.ToDictionary(a => a.Code, a => a.AvailableKg ?? double.PositiveInfinity);
            return new(
                way, found.Plan.TapOffKg, lines.Sum(l => l.Kg), over > Nothing ? over : 0, found.Minutes,
                lines.Where(l => l.Kg > stock[l.Code] + Nothing).ToDictionary(l => l.Code, l => l.Kg - stock[l.Code]));
        }
    }
}
