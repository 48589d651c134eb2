using MeltShop.Charging.Plans;
using MeltShop.Charging.WhatIf;
using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Charging;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Yard;

namespace MeltShop.Web.Pages.Charge;

/// <summary>Why a material is in or out.</summary>
public enum MaterialStanding
{
    InPlan,

    /// <summary>Too dear at its price, or of no use.</summary>
    NotChosen,

    /// <summary>Left out by the person.</summary>
    LeftOut,

    /// <summary>None in the yard.</summary>
    NoneThere,

    /// <summary>It has no analysis, and what is not measured is not zero.</summary>
    NoAnalysis,

    /// <summary>Nobody knows how much of it becomes metal.</summary>
    NoYield,

    /// <summary>All of it lies in bins that this charge leaves out.</summary>
    BinLeftOut,

    /// <summary>It holds magnesium, and nobody says how much of that stays.</summary>
    NoMgRecovery,
}

/// <summary>What a material brings of an element.</summary>
/// <param name="SharePercent">Share of what the melt holds of it, %.</param>
public sealed record Supply(Element Element, double SharePercent);

/// <summary>A material beside a plan. Masses in kg weighed, money in the shop's currency.</summary>
/// <param name="Percent">Share of the weighed charge.</param>
/// <param name="LiquidPercent">Share of the melt, heel included.</param>
/// <param name="Supplies">What it brings of elements that the melt has to hold.</param>
/// <param name="Burdens">What it brings of elements that may not be more.</param>
/// <param name="PriceToEnter">Price per 1000 kg at which it would come in; null where that cannot be said.</param>
/// <param name="Price">Price per 1000 kg that the plan reckons with: the yard's, or another one for this charge.</param>
public sealed record MaterialRow(
    MaterialView Material, MaterialStanding Standing, double Kg, double Percent, double Cost, double LiquidPercent,
    IReadOnlyList<Supply> Supplies, IReadOnlyList<Supply> Burdens, double? PriceToEnter, double Price)
{
    /// <summary>Less of an element than this share is not why a material is in, %.</summary>
    private const double WorthNaming = 10;

    private const int MostNamed = 4;

    /// <summary>Nothing of it can be planned before the yard says more of it.</summary>
    public bool IsUnsaid => Standing is MaterialStanding.NoAnalysis or MaterialStanding.NoYield or MaterialStanding.NoMgRecovery;

    /// <summary>Whether most of what it brings is iron.</summary>
    public bool IsIron { get; init; }

    /// <summary>Prices over which the plan stays as it is; null where that cannot be said.</summary>
    public PriceRange? Range { get; init; }

    /// <summary>Limits that make a left-out material dearer, heaviest first.</summary>
    public IReadOnlyList<LimitPressure> KeptOutBy { get; init; } = [];

    /// <summary>All materials of the view beside a plan: what is in by mass, then the rest, nearest to coming in first.</summary>
    public static IReadOnlyList<MaterialRow> Of(ChargeView view, PlannedCharge planned, ChargeDraft draft)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(planned);
        ArgumentNullException.ThrowIfNull(draft);
        return
        [
            .. view.Materials.Select(material => Of(material, planned, draft))
                .OrderByDescending(row => row.Kg).ThenBy(row => row.Standing)
                .ThenBy(row => row.PriceToEnter is { } price ? row.Price - price : double.MaxValue)
                .ThenBy(row => row.Material.Code, StringComparer.Ordinal),
        ];
    }

    private static MaterialRow Of(MaterialView lying, PlannedCharge planned, ChargeDraft draft)
    {
        var material = lying.Without(draft.LeftOutBins);
        var asked = planned.Problem.Materials.FirstOrDefault(m => m.Code == material.Code);
        if (asked is null)
        {
            var standing = draft.Material(material.Code).IsLeftOut ? MaterialStanding.LeftOut
                : ChargeMaterials.Gap(material) switch
                {
                    null when lying.StockKg is null or > 0 => MaterialStanding.BinLeftOut,
                    null => MaterialStanding.NoneThere,
                    "material.noAnalysis" => MaterialStanding.NoAnalysis,
                    "material.noYield" => MaterialStanding.NoYield,
                    _ => MaterialStanding.NoMgRecovery,
                };
            return new(material, standing, 0, 0, 0, 0, [], [], null, (double)material.PricePerTonne);
        }

        var line = planned.Plan.Lines.FirstOrDefault(l => l.Code == material.Code);
        if (line is null)
        {
            var price = planned.Plan.Materials.FirstOrDefault(m => m.Code == material.Code)?.PriceToEnterPerTonne;
            return new(material, MaterialStanding.NotChosen, 0, 0, 0, 0, [], [], price, asked.PricePerTonne)
            {
                KeptOutBy = [.. LimitPressure.On(planned.Problem, planned.Plan, asked).Take(MostNamed)],
            };
        }

        var arrival = Arrival.PerKilogram(asked.Composition);
        var limits = planned.Plan.Limits;
        return new(
            material, MaterialStanding.InPlan, line.Kg, line.Percent, line.Kg * asked.PricePerTonne / 1000,
            100 * line.Kg * arrival.LiquidKg / planned.Plan.LiquidKg,
            Supplied(arrival, line.Kg, planned.Plan),
            Brought(arrival, line.Kg, planned.Plan, limits.Where(limit => limit.Binding is BindingBound.Max)), null, asked.PricePerTonne)
        {
            IsIron = IsMostlyIron(arrival),
            Range = planned.Prices.FirstOrDefault(range => range.Code == material.Code),
        };
    }

    /// <summary>
    /// What it is there for: not what stands at its most. A little of what is no iron, such as coke or a ferro-alloy, is there for what it
    /// brings the most of, however little of the melt's that is.
    /// </summary>
    private static IReadOnlyList<Supply> Supplied(Arrival arrival, double kg, ChargePlan plan)
    {
        var wanted = plan.Limits.Where(limit => limit is { Min: not null, Binding: not BindingBound.Max }).ToList();
        var named = Brought(arrival, kg, plan, wanted);
        return named.Count > 0 || IsMostlyIron(arrival) ? named : [.. Brought(arrival, kg, plan, wanted, leastPercent: 0).Take(1)];
    }

    private static bool IsMostlyIron(Arrival arrival) => arrival.IronKg > arrival.LiquidKg / 2;

    private static IReadOnlyList<Supply> Brought(Arrival arrival, double kg, ChargePlan plan, IEnumerable<LimitOutcome> limits, double leastPercent = WorthNaming) =>
    [
        .. limits.Select(limit => Element.TryParse(limit.Quantity, out var element) ? element : null).OfType<Element>()
            .Where(element => plan.Analysis.OrZero(element) > 0 && arrival.ElementKg(element) > 0)
            .Select(element => new Supply(element, 100 * kg * arrival.ElementKg(element) / (plan.LiquidKg * plan.Analysis.OrZero(element) / 100)))
            .Where(supply => supply.SharePercent >= leastPercent)
            .OrderByDescending(supply => supply.SharePercent).Take(MostNamed),
    ];
}
