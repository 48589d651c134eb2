using Google.OrTools.LinearSolver;
using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Solving;

/// <summary>
/// One native solver with one program in it. It holds every native reference until it is disposed, since a collected one takes
/// the process down, and gives every row a name of its own, since a repeated one does too.
/// </summary>
internal sealed class NativeProgram : IDisposable
{
    public const string Linear = "GLOP";

    public const string Pieces = "CBC";

    /// <summary>Slower; asked where the first one errs.</summary>
    public const string OtherPieces = "SCIP";

    /// <summary>Gap within which a plan with pieces counts as the cheapest: costs are promised to six digits.</summary>
    public const double PiecesGap = 1e-7;

    /// <summary>Branch and bound looks for nothing that is better by less than 1e-5: costs about 1 have to be made larger for it.</summary>
    private const double PiecesCostScale = 1e5;

    /// <summary>
    /// Tolerances for six digits first. Where planes lie almost parallel the solver may call its own answer imprecise, a program with
    /// an optimum unbounded, or go round in circles (hence the most iterations, many times what is usual); then wider ones settle it (what comes out is held against the metal all the same).
    /// </summary>
    private static readonly string[] Attempts =
    [
        "primal_feasibility_tolerance: 1e-10 dual_feasibility_tolerance: 1e-10 max_number_of_iterations: 5000 use_preprocessing: false",
        "primal_feasibility_tolerance: 1e-10 dual_feasibility_tolerance: 1e-10 max_number_of_iterations: 5000",
        "primal_feasibility_tolerance: 1e-9 dual_feasibility_tolerance: 1e-8 max_number_of_iterations: 5000 use_dual_simplex: true",
        "",
        "use_dual_simplex: true",
    ];

    private readonly Solver solver;
    private readonly MPSolverParameters parameters = new();
    private readonly string engine;
    private readonly Variable[] variables;
    private readonly List<Constraint> constraints = [];

    public NativeProgram(IReadOnlyList<Column> columns, IEnumerable<Row> rows, string engine = Linear)
    {
        solver = Solver.CreateSolver(engine) ?? throw new InvalidOperationException($"The solver {engine} is not in this build.");
        this.engine = engine;
        parameters.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, PiecesGap);
        variables = new Variable[columns.Count];
        var costScale = engine == Linear ? 1 : PiecesCostScale;
        var objective = solver.Objective();
        objective.SetMinimization();
        for (var j = 0; j < variables.Length; j++)
        {
            var column = columns[j];
            variables[j] = solver.MakeVar(column.Least, column.Most, column.Whole, $"{j + 1} {column.Name}");
            objective.SetCoefficient(variables[j], column.Cost * costScale);
        }

        foreach (var row in rows) Add(row);
    }

    public void Add(Row row)
    {
        var constraint = solver.MakeConstraint(row.Least, row.Most, $"{constraints.Count + 1} {row.Name}");
        for (var j = 0; j < variables.Length; j++)
        {
            if (row.Coefficients[j] != 0) constraint.SetCoefficient(variables[j], row.Coefficients[j]);
        }

        constraints.Add(constraint);
    }

    public void Bound(int row, double least, double most) => constraints[row].SetBounds(least, most);

    public void BoundColumn(int column, double least, double most) => variables[column].SetBounds(least, most);

    /// <summary>Whether there is a point to read: after a time limit there may be one, without proof.</summary>
    public bool HasValues { get; private set; }

    /// <summary>Solves, within the time left.</summary>
    /// <exception cref="OperationCanceledException">The caller wished to stop.</exception>
    /// <exception cref="UndecidedException">The solver failed: a fault.</exception>
    public PlanStatus Solve(Budget budget)
    {
        foreach (var attempt in engine == Linear ? Attempts : [""])
        {
            solver.SetSolverSpecificParametersAsString(attempt);
            if (Attempt(budget) is { } status) return status;
        }

        throw new UndecidedException();
    }

    private PlanStatus? Attempt(Budget budget)
    {
        budget.Cancellation.ThrowIfCancellationRequested();
        HasValues = false;
        if (budget.IsSpent) return PlanStatus.TimeLimit;
        solver.SetTimeLimit((long)Math.Ceiling(budget.Left.TotalMilliseconds));
        Solver.ResultStatus status;
        using (budget.Cancellation.Register(() => solver.InterruptSolve())) status = solver.Solve(parameters);
        budget.Cancellation.ThrowIfCancellationRequested();
        HasValues = status is Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE;
        return status switch
        {
            Solver.ResultStatus.OPTIMAL => PlanStatus.Optimal,
            Solver.ResultStatus.FEASIBLE when budget.IsSpent || engine != Linear => PlanStatus.TimeLimit,
            _ when budget.IsSpent => PlanStatus.TimeLimit,
            Solver.ResultStatus.INFEASIBLE => PlanStatus.Infeasible,
            _ => null,
        };
    }

    /// <summary>No solution costs less than this, as far as the search came; null where that is not known.</summary>
    public double? Bound() => solver.Objective().BestBound() / (engine == Linear ? 1 : PiecesCostScale) is var bound && double.IsFinite(bound) ? bound : null;

    public double[] Values() => [.. variables.Select(v => v.SolutionValue())];

    public double[] Duals() => [.. constraints.Select(c => c.DualValue())];

    public double[] ReducedCosts() => [.. variables.Select(v => v.ReducedCost())];

    public void Dispose()
    {
        solver.Dispose();
        parameters.Dispose();
        GC.KeepAlive(variables);
        GC.KeepAlive(constraints);
    }
}
