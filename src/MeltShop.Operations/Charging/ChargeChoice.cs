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
    double ConfidencePercent = 50);

/// <summary>Overrides of one material; null leaves what the yard says.</summary>
/// <param name="Code">The material.</param>
/// <param name="Include">False leaves it out; true takes it although it has no stock.</param>
/// <param name="PricePerTonne">Price to reckon with.</param>
/// <param name="MinKg">Compulsory mass, kg.</param>
/// <param name="MaxKg">Greatest mass, kg.</param>
/// <param name="MaxPercent">Greatest share of the weighed charge, %.</param>
public sealed record MaterialChoice(
    string Code, bool? Include = null, decimal? PricePerTonne = null, double? MinKg = null, double? MaxKg = null, double? MaxPercent = null);

/// <summary>Overrides of one limit; null leaves what the grade says.</summary>
/// <param name="Quantity">Element symbol or <c>CE</c>; one that the grade does not limit is limited for this charge.</param>
public sealed record LimitChoice(string Quantity, double? Least = null, double? Most = null);
