using MeltShop.Charging.Problems;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Storing;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Components.Weighing;

namespace MeltShop.Web.Pages.Heats;

/// <summary>What stands on the melter's card.</summary>
/// <param name="Rest">The rest as it was planned anew; null before the first weighing and once the bath was sampled.</param>
/// <param name="Steps">In the order of loading.</param>
/// <param name="Cautions">Codes of what is dangerous about the materials on it.</param>
public sealed record WeighingSheetView(
    HeatView Heat, IReadOnlyList<MaterialView> Yard, ChargeProblem Asked, RestAnswer? Rest, IReadOnlyList<WeighingStep> Steps, IReadOnlyList<string> Cautions)
{
    /// <summary>Nothing more is asked for.</summary>
    public bool IsAllIn { get; private init; }

    /// <summary>Nothing is asked for before a metallurgist has looked.</summary>
    public bool IsStopped { get; private init; }

    public static WeighingSheetView Of(HeatView heat, IReadOnlyList<MaterialView> yard, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(heat);
        var rest = heat.Heat.State is HeatState.Charging ? RestQuestion.Answer(heat, yard, cancellation) : null;
        var isStopped = FirstPlan.IsStopped(heat, rest);
        var rows = WeighingRow.Of(heat, yard, rest?.Lines, isStopped);
        var codes = rows.Select(row => row.Code).ToHashSet();
        return new(
            heat, yard, StoredJson.Value<ChargeProblem>(heat.Plan.Problem), rest, [.. rows.Where(row => !row.IsTooLittle).Select(row => row.Step(rows.FirstOrDefault(other => other.IsOpen) == row))],
            [.. yard.Where(item => codes.Contains(item.Code)).SelectMany(item => item.Cautions).Distinct().Order(StringComparer.Ordinal)])
        {
            IsStopped = isStopped,
            IsAllIn = !isStopped && !rows.Any(row => row.IsOpen),
        };
    }
}
