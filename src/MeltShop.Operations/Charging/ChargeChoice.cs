using MeltShop.Records.Sites;

namespace MeltShop.Operations.Charging;

/// <summary>What a person chooses for a charge; what they leave open comes from the furnace, the grade and the yard.</summary>
/// <param name="MeltKg">Liquid wanted, heel included, kg.</param>
/// <param name="MeltToleranceKg">How much more is acceptable, kg.</param>
/// <param name="HeelKg">What is in the furnace, kg; null for what its ledger says.</param>
/// <param name="Materials">Overrides; a material that is not named is taken as the yard has it.</param>
/// <param name="Limits">Overrides; a limit that is not named is taken as the grade has it.</param>
/// <param name="ConfidencePercent">One-sided, at which each bound holds given the scatter, 50 to below 100 %.</param>
public sealed record ChargeChoice(
    long FurnaceId,
    long GradeId,
    double MeltKg,
    double MeltToleranceKg = 0,
    double? HeelKg = null,
    IReadOnlyList<MaterialChoice>? Materials = null,
    IReadOnlyList<LimitChoice>? Limits = null,
    double ConfidencePercent = 50)
{
    /// <summary>Which iron has to keep its window.</summary>
    public ChargeTarget Target { get; init; }

    /// <summary>The ladle whose treatment lies between furnace and mould; needed where the poured ductile iron is the target.</summary>
    public long? LadleId { get; init; }

    /// <summary>Bounds on kinds of material.</summary>
    public IReadOnlyList<GroupChoice> Groups { get; init; } = [];

    public ChargeWishes Wishes { get; init; } = new();

    /// <summary>Bins out of reach: what lies in them counts as not there.</summary>
    public IReadOnlyList<string> LeftOutBins { get; init; } = [];

    /// <summary>The charge as a person made it, which is checked and not changed; null for the cheapest.</summary>
    public IReadOnlyList<ChosenMass>? ByHand { get; init; }
}

/// <summary>Which iron has to keep its window.</summary>
public enum ChargeTarget
{
    /// <summary>The furnace iron, before treatment.</summary>
    Furnace,

    /// <summary>The iron in the mould, through treatment and inoculation by the grade's recipe; what only the furnace window limits stays.</summary>
    Poured,
}

/// <summary>Overrides of one material; null leaves what the yard says.</summary>
/// <param name="Code">The material.</param>
/// <param name="Include">False leaves it out; true takes it although it has no stock.</param>
/// <param name="PricePerTonne">Price to reckon with.</param>
/// <param name="MinKg">Compulsory mass, kg.</param>
/// <param name="MaxKg">Greatest mass, kg.</param>
/// <param name="MaxPercent">Greatest share of the weighed charge, %.</param>
/// <param name="MinPercent">Least share of the weighed charge, %.</param>
public sealed record MaterialChoice(
    string Code, bool? Include = null, decimal? PricePerTonne = null, double? MinKg = null, double? MaxKg = null, double? MaxPercent = null, double? MinPercent = null);

/// <summary>Overrides of one limit; null leaves what the grade says.</summary>
/// <param name="Quantity">Name of a <see cref="Metallurgy.Route.WindowQuantity"/>; one that the grade does not limit is limited for this charge.</param>
public sealed record LimitChoice(string Quantity, double? Least = null, double? Most = null);

/// <summary>Bounds on a kind of material; null is no bound.</summary>
/// <param name="Group">One of <see cref="ChargeGroups.Names"/>.</param>
/// <param name="MinKg">Compulsory mass, kg.</param>
/// <param name="MaxKg">Greatest mass, kg.</param>
/// <param name="MinPercent">Least share of the weighed charge, %.</param>
/// <param name="MaxPercent">Greatest share of the weighed charge, %.</param>
public sealed record GroupChoice(string Group, double? MinKg = null, double? MaxKg = null, double? MinPercent = null, double? MaxPercent = null);

/// <summary>A mass of a charge that a person made, kg weighed.</summary>
public sealed record ChosenMass(string Code, double Kg);

/// <summary>What else counts in a plan; null is what the shop says, and nothing where it says nothing.</summary>
/// <param name="NearnessPrice">What one point off the grade's aim is taken to cost, per 1000 kg of liquid.</param>
/// <param name="SlagCostPerTonne">Cost of 1000 kg of slag; what yield leaves over counts as slag.</param>
/// <param name="EnergyPricePerKWh">Price of a kilowatt-hour at the furnace.</param>
/// <param name="MeltingKWhPerTonne">What 1000 kg of cold charge take, kWh.</param>
/// <param name="UseUpBonusPerTonne">How much dearer returns may make the charge, per 1000 kg of them.</param>
/// <param name="FurnaceM3">Room for the cold charge in the furnace, m³.</param>
/// <param name="BucketM3">Room of the charging bucket, m³.</param>
/// <param name="BucketFillings">How often the bucket is filled.</param>
public sealed record ChargeWishes(
    double? NearnessPrice = null, double? SlagCostPerTonne = null, double? EnergyPricePerKWh = null, double? MeltingKWhPerTonne = null,
    double? UseUpBonusPerTonne = null, double? FurnaceM3 = null, double? BucketM3 = null, double? BucketFillings = null)
{
    /// <summary>These, and the shop's where a plan says nothing.</summary>
    public ChargeWishes Over(ChargeRule? rule) => rule is null ? this : new(
        NearnessPrice ?? rule.NearnessPrice, SlagCostPerTonne ?? rule.SlagCostPerTonne, EnergyPricePerKWh ?? rule.EnergyPricePerKWh,
        MeltingKWhPerTonne ?? rule.MeltingKWhPerTonne, UseUpBonusPerTonne ?? rule.UseUpBonusPerTonne, FurnaceM3, BucketM3 ?? rule.BucketM3,
        BucketFillings ?? rule.BucketFillings);
}
