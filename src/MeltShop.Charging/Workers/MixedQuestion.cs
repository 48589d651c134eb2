using System.Text.Json;
using System.Text.Json.Serialization;
using MeltShop.Charging.Formulation;
using MeltShop.Charging.Plans;

namespace MeltShop.Charging.Workers;

/// <summary>A linear program with whole columns, as one line of text to a worker.</summary>
/// <param name="Columns">Its columns.</param>
/// <param name="Rows">Its rows, none with scatter.</param>
/// <param name="Milliseconds">Time for the solve.</param>
internal sealed record MixedQuestion(IReadOnlyList<Column> Columns, IReadOnlyList<MixedRow> Rows, double Milliseconds)
{
    public static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web)
    {
        NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals,
    };

    public static MixedQuestion Of(IReadOnlyList<Column> columns, IEnumerable<Row> rows, TimeSpan time) =>
        new(columns, [.. rows.Select(r => new MixedRow(r.Coefficients, r.Least, r.Most))], time.TotalMilliseconds);
}

/// <summary>least ≤ coefficients · values ≤ most.</summary>
internal sealed record MixedRow(double[] Coefficients, double Least, double Most);

/// <summary>What came of it.</summary>
/// <param name="Status">How the solve ended; null where it could not be decided.</param>
/// <param name="Values">The best that was found; null where nothing was.</param>
/// <param name="Bound">No solution costs less than this; null where that is not known.</param>
internal sealed record MixedAnswer(PlanStatus? Status, double[]? Values, double? Bound)
{
    /// <summary>How it came to an end where it is not the solver's own.</summary>
    [JsonIgnore]
    public SearchEnd End { get; init; } = Status switch
    {
        null => SearchEnd.Undecided,
        PlanStatus.TimeLimit => SearchEnd.OutOfTime,
        _ => SearchEnd.Proven,
    };

    public static MixedAnswer Without(SearchEnd end) => new(PlanStatus.TimeLimit, null, null) { End = end };
}
