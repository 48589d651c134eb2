using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Sites;

namespace MeltShop.Records.Reading.Charge;

/// <summary>What a charge plan needs.</summary>
/// <param name="Furnaces">Those in use.</param>
/// <param name="Grades">Those in use, with their windows.</param>
/// <param name="Materials">Those in use that may be charged.</param>
/// <param name="Currency">ISO 4217 code; null before the site is set up.</param>
public sealed record ChargeView(
    IReadOnlyList<ChargeFurnaceView> Furnaces, IReadOnlyList<GradeView> Grades, IReadOnlyList<MaterialView> Materials, string? Currency)
{
    /// <summary>Treatment alloys, cover steels and inoculants that the recipes of the grades name.</summary>
    public IReadOnlyList<MaterialView> RouteMaterials { get; init; } = [];

    /// <summary>What the shop reckons with in every charge; null before anybody said.</summary>
    public ChargeRule? Rule { get; init; }

    /// <summary>Ladles in use, whose recovery and fade of magnesium lie between furnace and mould.</summary>
    public IReadOnlyList<ChargeLadleView> Ladles { get; init; } = [];
}

/// <param name="MgRecoveryPercent">With the sulphur credited.</param>
/// <param name="RecoveryTemperatureC">Where the recovery was found; null where it is taken as it is.</param>
public sealed record ChargeLadleView(
    long Id, string Code, string Name, double MgRecoveryPercent, double? RecoveryTemperatureC, double MgFadePercentPerMinute);

/// <param name="Heel">What the last heat left; null where nothing is known about the furnace.</param>
/// <param name="LiquidKg">Sum of the furnace's metal ledger.</param>
/// <param name="HeatId">The heat that is in it now.</param>
public sealed record ChargeFurnaceView(
    long Id, string Code, string Name, double CapacityKg, double PowerKw, HeelView? Heel, double LiquidKg, long? HeatId, string? HeatNumber)
{
    /// <summary>Room for the cold charge, m³; null where nobody has entered one.</summary>
    public double? ColdChargeM3 { get; init; }
}

/// <param name="FromHeatNumber">The heat that left it; null where it was entered by hand.</param>
public sealed record HeelView(
    long Id, double Kg, Analysis Analysis, DateTimeOffset ObservedAt, long? FromHeatId, string? FromHeatNumber, long? SampleId);

/// <summary>A plan as it was stored, with the heats that were started from it.</summary>
/// <param name="Problem">JSON.</param>
/// <param name="Answer">JSON.</param>
public sealed record PlanView(
    Origin Origin, long FurnaceId, long GradeId, double MeltKg, string Problem, string Answer, string Versions, decimal TotalCost,
    IReadOnlyList<PlannedHeat> Heats)
{
    public long Id => Origin.FactId;

    public string FurnaceName { get; init; } = "";

    public string GradeCode { get; init; } = "";

    /// <summary>JSON; null in plans of before.</summary>
    public string? Choice { get; init; }

    /// <summary>What it used and was corrected since; its numbers stay what they were.</summary>
    public IReadOnlyList<StaleNote> Stale { get; init; } = [];
}

public sealed record PlannedHeat(long Id, string Number, HeatState State);
