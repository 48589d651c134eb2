using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Solving;

namespace MeltShop.Charging.Workers;

/// <summary>One solve of a program with whole columns, in this process: the native solver may hang or crash it.</summary>
internal static class MixedSolver
{
    public static MixedAnswer Solve(MixedQuestion question, CancellationToken cancellation)
    {
        var budget = new Budget(TimeSpan.FromMilliseconds(question.Milliseconds), cancellation);
        var rows = question.Rows.Select((r, i) => new Row($"row {i + 1}", r.Coefficients, r.Least, r.Most));
        using var native = new NativeProgram(question.Columns, rows, NativeProgram.Pieces);
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
}
