using MeltShop.Records.Reading.Grades;

namespace MeltShop.Operations.Correcting;

/// <summary>What else a bath could become: another grade that it meets, or meets after a correction of its own.</summary>
/// <param name="Kg">Additions and tapping off, kg; 0 where it meets the grade already.</param>
/// <param name="Cost">At the yard's prices.</param>
/// <param name="OrderedKg">Metal of this grade that is ordered and not melted yet, kg; 0 where nobody waits for it.</param>
public sealed record OtherGrade(GradeView Grade, double Kg, double Cost, double OrderedKg)
{
    /// <summary>Those that can be reached: first what is ordered, of each the cheapest first.</summary>
    public static IReadOnlyList<OtherGrade> Of(CorrectionFacts facts, CorrectionChoice choice, CancellationToken ct)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(choice);
        var bare = choice with { NearnessPrice = null }; // the smallest correction that is enough
        var reached = new List<OtherGrade>();
        foreach (var grade in facts.View.OtherGrades)
        {
            if (CorrectionQuestion.Build(facts, bare, grade).Problem is not { } problem) continue;
            var proposal = CorrectionProposal.For(facts, choice, problem, ct);
            if (proposal.IsReached) reached.Add(new(grade, proposal.Plan.TapOffKg + proposal.Plan.Plan.Lines.Sum(line => line.Kg), proposal.Cost, facts.View.OrderedKg.GetValueOrDefault(grade.Id)));
        }

        return [.. reached.OrderBy(r => r.OrderedKg == 0).ThenBy(r => r.Cost).ThenBy(r => r.Kg)];
    }
}
