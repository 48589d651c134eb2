using MeltShop.Charging.Problems;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Heats;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Heats;

namespace MeltShop.Operations.Charging;

/// <summary>
/// What the rest of a charge stands on. The plan has a heel, the furnace's ledger has one, and neither is above doubt: a plan that was made while another heat was
/// in the furnace guessed, and a ledger of weighed charge and estimated yields drifts. The later word counts: a person's stands until the heel was recorded, dipped
/// or put right after it. Where the two are apart both are told.
/// </summary>
/// <param name="Metal">What the rest is planned with.</param>
/// <param name="PlannedKg">By the plan and what was poured out or back since, kg.</param>
/// <param name="LedgerKg">By the ledger, kg; below zero it cannot be right.</param>
public sealed record RestHeel(Metal Metal, double PlannedKg, double LedgerKg)
{
    /// <summary>The two are further apart than a melt is weighed: somebody has to dip, or plan anew.</summary>
    public bool Differs { get; private init; }

    /// <summary>Another metal than the plan was made with: its masses do not stand.</summary>
    public bool IsOther { get; private init; }

    /// <summary>The most that may be there, kg: what the furnace's capacity is held against.</summary>
    public double MostKg => Math.Max(Metal.Kg, Math.Max(PlannedKg, LedgerKg));

    /// <param name="heat">A heat that is being charged.</param>
    /// <param name="asked">What was asked before anything was weighed.</param>
    public static RestHeel Of(HeatView heat, ChargeProblem asked)
    {
        ArgumentNullException.ThrowIfNull(heat);
        ArgumentNullException.ThrowIfNull(asked);
        var changes = heat.Metal.Where(line => !line.Origin.IsCorrected && line.Kind is not FurnaceMetalKind.Charged).ToList();
        // A dip tells of the heel while nothing else is in; after that it is a word on the ledger only.
        var charged = heat.Weighings.Where(weighing => !weighing.Origin.IsCorrected).Select(weighing => weighing.Origin.ObservedAt).DefaultIfEmpty(DateTimeOffset.MaxValue).Min();
        var dips = changes.Where(line => line.Kind is FurnaceMetalKind.Dipped && line.Origin.ObservedAt <= charged).ToList();
        var moved = changes.Where(line => line.Kind is not FurnaceMetalKind.Dipped).ToList();

        var planned = After(asked.Heel.Kg, asked.Heel.Analysis, moved);
        var ledgerKg = heat.Heat.HeelKg + changes.Sum(line => line.Kg);
        var isLater = StoredChoice.Of(heat.Plan) is { HeelKg: null } || dips.Count > 0
            || heat.Heel?.EnteredAt > heat.Plan.Origin.EnteredAt || heat.OfItself.Any(correction => correction.HeelKg != correction.FormerHeelKg);
        var isLedger = isLater && heat.Heat.HeelKg + moved.Concat(dips).Sum(line => line.Kg) >= 0;
        var metal = isLedger ? After(Math.Max(0, heat.Heat.HeelKg), heat.Heel?.Analysis ?? Analysis.Empty, [.. moved, .. dips]) : planned;

        var near = asked.MeltKg * RestQuestion.NearPercent / 100;
        double[] told = [metal.Kg, planned.Kg, ledgerKg];
        return new(metal, planned.Kg, ledgerKg)
        {
            Differs = told.Max() - told.Min() > near,
            IsOther = Math.Abs(metal.Kg - asked.Heel.Kg) > near || (metal.Kg > near && !IsNear(metal.Analysis, asked.Heel.Analysis)),
        };
    }

    private static Metal After(double kg, Analysis analysis, IEnumerable<MetalView> lines) =>
        HeelQuestion.Build(kg, analysis, lines.Select(line => new MetalChange(
            line.Origin.ObservedAt, line.Kind, line.Kg, PouredBack: line.Kind is FurnaceMetalKind.PouredBack ? line.Analysis : null)));

    private static bool IsNear(Analysis one, Analysis other) =>
        one.Select(percent => percent.Key).Union(other.Select(percent => percent.Key)).All(element =>
            one.Has(element) == other.Has(element) && Math.Abs(one.OrZero(element) - other.OrZero(element)) < 1e-6);
}
