using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Workers;

/// <summary>One solve of a program with whole columns, in this process: the native solver may hang or crash it.</summary>
internal static class MixedSolver
{
    /// <summary>How far an answer may miss a row, a bound or a whole number; rows and columns are about 1.</summary>
    private const double Tolerance = 1e-4;

    /// <summary>
    /// The answer of branch and bound. Where rows lie almost parallel it may call a point optimal that is far outside of them, or give up: then another solver is asked, and
    /// what that one says has to keep them too.
    /// </summary>
    public static MixedAnswer Solve(MixedQuestion question, CancellationToken cancellation)
    {
        var budget = new Budget(TimeSpan.FromMilliseconds(question.Milliseconds), cancellation);
        return Solve(question, engine => Solve(question, engine, budget));
    }

    /// <summary>The same, asking each solver by its name.</summary>
    internal static MixedAnswer Solve(MixedQuestion question, Func<string, MixedAnswer> ask)
    {
        var answer = ask(NativeProgram.Pieces);
        if (answer.Status is not null && Keeps(question, answer)) return answer;
        answer = ask(NativeProgram.OtherPieces);
        return Keeps(question, answer) ? answer : MixedAnswer.Without(SearchEnd.Undecided) with { Status = null };
    }

    /// <summary>The answer of one solver.</summary>
    internal static MixedAnswer Solve(MixedQuestion question, string engine, Budget budget)
    {
        var rows = question.Rows.Select((r, i) => new Row($"row {i + 1}", r.Coefficients, r.Least, r.Most));
        using var native = new NativeProgram(question.Columns, rows, engine);
        try
        {
            var status = native.Solve(budget);
            return new(status, native.HasValues ? native.Values() : null, native.HasValues ? native.Bound() : null);
        }
        catch (UndecidedException)
        {
            return MixedAnswer.Without(SearchEnd.Undecided) with { Status = null };
        }
    }

    /// <summary>Whether the values of an answer keep rows and bounds and are whole where they have to be; no values miss nothing.</summary>
    internal static bool Keeps(MixedQuestion question, MixedAnswer answer) => answer.Values is not { } values
        || (question.Columns.Zip(values).All(c => c.Second >= c.First.Least - Tolerance && c.Second <= c.First.Most + Tolerance
                && !(c.First.Whole && Math.Abs(c.Second - Math.Round(c.Second)) > Tolerance))
            && question.Rows.All(r => r.Coefficients.Zip(values, (c, v) => c * v).Sum() is var sum && sum >= r.Least - Tolerance && sum <= r.Most + Tolerance));
}
