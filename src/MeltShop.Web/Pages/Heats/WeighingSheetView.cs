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

    /// <summary>The rest could not be planned: the card says so, and <see cref="FirstPlan"/> says whether the first plan stays.</summary>
    public bool HasFailed { get; private init; }

    public static WeighingSheetView Of(HeatView heat, IReadOnlyList<MaterialView> yard, ILogger log, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(heat);
        var (rest, hasFailed) = PlanRest(heat, yard, log, cancellation);
        var isStopped = FirstPlan.IsStopped(heat, rest, hasFailed);
        var rows = WeighingRow.Of(heat, yard, rest?.Lines, isStopped);
        var codes = rows.Select(row => row.Code).ToHashSet();
        return new(
            heat, yard, StoredJson.Value<ChargeProblem>(heat.Plan.Problem), rest, [.. rows.Where(row => !row.IsTooLittle).Select(row => row.Step(rows.FirstOrDefault(other => other.IsOpen) == row))],
            [.. yard.Where(item => codes.Contains(item.Code)).SelectMany(item => item.Cautions).Distinct().Order(StringComparer.Ordinal)])
        {
            HasFailed = hasFailed,
            IsStopped = isStopped,
            IsAllIn = !isStopped && !rows.Any(row => row.IsOpen),
        };
    }

    private static (RestAnswer? Answer, bool HasFailed) PlanRest(HeatView heat, IReadOnlyList<MaterialView> yard, ILogger log, CancellationToken cancellation)
    {
        if (heat.Heat.State is not HeatState.Charging) return (null, false);
        try
        {
            return (RestQuestion.Answer(heat, yard, cancellation), false);
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
            throw;
        }
#pragma warning disable CA1031 // whatever kept it from being planned: who loads has to see what is in
        catch (Exception fault)
#pragma warning restore CA1031
        {
            log.LogError(fault, "The rest of a charge could not be planned");
            return (null, true);
        }
    }
}
