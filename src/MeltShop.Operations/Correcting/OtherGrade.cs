using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Orders;

namespace MeltShop.Operations.Correcting;

/// <summary>What else a bath could become: another grade that it meets, or meets after a correction of its own.</summary>
/// <param name="Kg">Additions and tapping off, kg; 0 where it meets the grade already.</param>
/// <param name="Cost">At the yard's prices.</param>
/// <param name="Minutes">To bring the bath back to its temperature at rated power; null where the heat of an addition is not known.</param>
/// <param name="Orders">Open orders of the grade that still need metal, the nearest due first.</param>
/// <param name="IsSmaller">
/// By the goal that was chosen it takes less handled than the correction to the heat's own grade does, or that one cannot be reached; null where nobody knows, for
/// the search for the own one came to no end.
/// </param>
/// <param name="PlannedKg">Metal of this grade that is planned and not started, kg.</param>
public sealed record OtherGrade(GradeView Grade, double Kg, double Cost, double? Minutes, IReadOnlyList<OrderView> Orders, double PlannedKg, bool? IsSmaller)
{
    /// <summary>What its window asks for and was not measured: it counts as 0.</summary>
    public IReadOnlyList<Element> AssumedZero { get; init; } = [];

    /// <summary>
    /// Those that can be reached, and the codes of those of which the search came to no end: first what takes less than the heat's own grade, of that what is
    /// ordered, then what is planned, of each the cheapest first.
    /// </summary>
    public static GradesInReach Of(CorrectionFacts facts, CorrectionChoice choice, CancellationToken ct)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(choice);
        var bare = choice with { NearnessPrice = null }; // the smallest correction that is enough
        var ownKg = Own(facts, bare, ct);
        var (reached, notDecided) = (new List<OtherGrade>(), new List<string>());
        foreach (var grade in facts.View.OtherGrades)
        {
            if (CorrectionQuestion.Build(facts, bare, grade).Problem is not { } problem) continue;
            var proposal = CorrectionProposal.For(facts, choice, problem, ct);
            if (!proposal.IsReached && !proposal.IsImpossible) notDecided.Add(grade.Code);
            if (!proposal.IsReached) continue;
            var kg = Handled(proposal);
            reached.Add(new(
                grade, kg, proposal.Cost, proposal.Minutes, [.. facts.View.ToPour.Where(order => order.GradeId == grade.Id)],
                facts.View.PlannedKg.GetValueOrDefault(grade.Id), kg == 0 ? true : ownKg is { } own ? kg < own : null)
            {
                AssumedZero = proposal.Plan.Plan.AssumedZero,
            });
        }

        return new(
            [.. reached.OrderBy(r => r.IsSmaller switch { true => 0, null => 1, false => 2 }).ThenBy(r => r.Orders.Count == 0).ThenBy(r => r.PlannedKg == 0).ThenBy(r => r.Cost).ThenBy(r => r.Kg)], notDecided);
    }

    /// <summary>What the heat's own grade takes: more than anything where it cannot be reached, null where the search came to no end.</summary>
    private static double? Own(CorrectionFacts facts, CorrectionChoice bare, CancellationToken ct)
    {
        if (CorrectionQuestion.Build(facts, bare).Problem is not { } problem) return null;
        var own = CorrectionProposal.For(facts, bare, problem, ct);
        return own.IsReached ? Handled(own) : own.IsImpossible ? double.PositiveInfinity : null;
    }

    private static double Handled(CorrectionProposal proposal) => proposal.Plan.TapOffKg + proposal.Plan.Plan.Lines.Sum(line => line.Kg);
}

/// <summary>What a bath could become, and the codes of grades of which the search came to no end: of them nothing is known.</summary>
public sealed record GradesInReach(IReadOnlyList<OtherGrade> Found, IReadOnlyList<string> NotDecided);
