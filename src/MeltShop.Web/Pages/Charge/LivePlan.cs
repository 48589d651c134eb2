using MeltShop.Charging;
using MeltShop.Charging.Plans;
using MeltShop.Charging.Problems;
using MeltShop.Charging.WhatIf;
using MeltShop.Operations.Charging;

namespace MeltShop.Web.Pages.Charge;

/// <summary>A plan with the question that it answers.</summary>
public sealed record PlannedCharge(ChargeProblem Problem, ChargePlan Plan)
{
    /// <summary>Over which price of each material it stays as it is.</summary>
    public IReadOnlyList<PriceRange> Prices { get; init; } = [];

    /// <summary>The charge that a person made instead, checked against the same question; null where nobody did.</summary>
    public HandCharge? ByHand { get; init; }

    /// <summary>What is to be melted: the charge made by hand, or else the plan.</summary>
    public PlannedCharge Shown => ByHand is { } made ? this with { Plan = made.AsPlan } : this;

    /// <summary>What goes in, kg by code.</summary>
    public IReadOnlyDictionary<string, double> Kilograms => Shown.Plan.Lines.ToDictionary(line => line.Code, line => line.Kg);

    /// <summary>Whether there is a charge that keeps all limits.</summary>
    public bool IsReached => Plan.Status != PlanStatus.Infeasible && (Plan.Lines.Count > 0 || Plan.Status == PlanStatus.Optimal);

    /// <summary>Whether wishes steer it, so that what limits and materials are said to cost is not money alone.</summary>
    public bool IsSteered => Problem.Limits.Any(limit => limit.Nearness is { PricePerPointTonne: > 0 }) || Problem.Materials.Any(material => material.UseUpBonusPerTonne > 0);

    /// <summary>Whether it is proven that there is none. A search that came to no end proves nothing: then there may be neither a charge nor this.</summary>
    public bool IsImpossible => Plan.Status == PlanStatus.Infeasible;
}

/// <summary>
/// Plans the newest question away from the page's own thread. A later question cancels an earlier one; the last plan stays until the
/// next is there.
/// </summary>
public sealed class LivePlan(TimeProvider clock) : IDisposable
{
    /// <summary>Changes within this time are planned as one; the first question is planned at once.</summary>
    public static TimeSpan Pause { get; } = TimeSpan.FromMilliseconds(250);

    private CancellationTokenSource? running;

    /// <summary>The last plan; null before the first.</summary>
    public PlannedCharge? Last { get; private set; }

    /// <summary>True where the last plan answers the last question.</summary>
    public bool IsCurrent { get; private set; }

    public bool IsWorking => running is not null;

    /// <summary>Plans this. Returns when the answer is there, or when a later question has taken its place.</summary>
    /// <param name="problem">The question.</param>
    /// <param name="byHand">A charge that a person made, to be checked beside the plan.</param>
    public async Task Ask(ChargeProblem problem, IReadOnlyList<ChosenMass>? byHand = null)
    {
        var isFirst = Last is null && running is null;
        Withdraw();
        using var mine = new CancellationTokenSource();
        running = mine;
        try
        {
            if (!isFirst) await Task.Delay(Pause, clock, mine.Token);
            var planned = await Task.Run(() => Plan(problem, byHand, mine.Token), mine.Token);
            if (running == mine) (Last, IsCurrent) = (planned, true);
        }
        catch (OperationCanceledException) when (mine.IsCancellationRequested)
        {
        }
        finally
        {
            if (running == mine) running = null;
        }
    }

    private static PlannedCharge Plan(ChargeProblem problem, IReadOnlyList<ChosenMass>? byHand, CancellationToken cancellation) =>
        new(problem, ChargeOptimiser.Explained(problem, cancellation))
        {
            Prices = PriceRanges.Of(problem, cancellation),
            ByHand = byHand is null ? null : HandCharge.Of(problem, byHand),
        };

    /// <summary>There is no question that could be planned just now: what is still being planned is given up, and the last plan no longer holds.</summary>
    public void Withdraw()
    {
        running?.Cancel();
        running = null;
        IsCurrent = false;
    }

    public void Dispose() => Withdraw();
}
