using MeltShop.Charging.Formulation;

namespace MeltShop.Charging.Solving;

/// <summary>What holds a solution where it is: the rows and the column bounds that it sits on.</summary>
internal sealed class ActiveSet
{
    private const double Tolerance = 1e-9;

    public ActiveSet(Solution solution)
    {
        Columns = [.. solution.Solved.Columns.Select((c, j) => (At(solution.Values[j], c.Least), At(solution.Values[j], c.Most)))];
        Rows = [.. solution.Solved.Rows.Select(r => AtEnds(r, r.Activity(solution.Values)))];
    }

    /// <summary>Whether each column sits on its lower and on its upper bound.</summary>
    public IReadOnlyList<(bool Least, bool Most)> Columns { get; }

    /// <summary>Whether each row sits on its lower and on its upper bound.</summary>
    public IReadOnlyList<(bool Least, bool Most)> Rows { get; }

    public int Count => Columns.Count(c => c.Least || c.Most) + Rows.Count(r => r.Least || r.Most);

    private static (bool Least, bool Most) AtEnds(Row row, double activity) => (At(activity, row.Least), At(activity, row.Most));

    private static bool At(double value, double bound) =>
        double.IsFinite(bound) && Math.Abs(value - bound) <= Tolerance * Math.Max(1, Math.Abs(bound));
}
