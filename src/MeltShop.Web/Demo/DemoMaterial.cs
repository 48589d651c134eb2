using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Yard;

namespace MeltShop.Web.Demo;

/// <summary>A material of the yard.</summary>
/// <remarks>
/// The analysis is that of the part that melts in, and what it does not name counts as iron. So a material with a part that is
/// neither metal nor carbon (ash and volatiles of a carburiser, silica of silicon carbide, rock of pyrite) has that part in its
/// yield; the printed figures stand in <see cref="AsWeighed"/>, and yield × analysis gives them back.
/// </remarks>
public sealed record DemoMaterial
{
    /// <summary>Unique, plain words.</summary>
    public required string Code { get; init; }

    /// <summary>Name shown.</summary>
    public required string Name { get; init; }

    /// <summary>What it is.</summary>
    public required MaterialKind Kind { get; init; }

    /// <summary>Where it may be used.</summary>
    public required IReadOnlyList<MaterialUses> Uses { get; init; }

    /// <summary>Analysis of the part that melts in.</summary>
    public required Analysis Analysis { get; init; }

    /// <summary>Standard deviation of a percent, percentage points; estimates from memory.</summary>
    public required IReadOnlyDictionary<Element, double> Spread { get; init; }

    /// <summary>The printed figures, percent of the weighed mass, where a part of the material does not melt in; else null.</summary>
    public Analysis? AsWeighed { get; init; }

    /// <summary>Share of the weighed mass that melts in, %.</summary>
    public required double MetallicYieldPercent { get; init; }

    /// <summary>Share of an element that arrives, %; 100 where not named. From memory, for an acid coreless furnace, with the charge.</summary>
    public required IReadOnlyDictionary<Element, double> RecoveryPercent { get; init; }

    /// <summary>Share of an element that arrives when it goes into liquid iron, %; as with the charge where not named.</summary>
    public IReadOnlyDictionary<Element, double> BathRecoveryPercent { get; init; } = new Dictionary<Element, double>();

    /// <summary>Where that comes from; null where nothing is named.</summary>
    public string? BathRecoveryNote { get; init; }

    /// <summary>Heat to bring 1000 kg into solution at 1450 °C, kWh/t, negative where it gives heat; null for iron and steel, and where not known.</summary>
    public double? HeatKWhPerTonne { get; init; }

    /// <summary>Suggested greatest share of the charge, %; null where none.</summary>
    public required double? MaxSharePercent { get; init; }

    /// <summary>Why there is a greatest share.</summary>
    public string? MaxShareReason { get; init; }

    /// <summary>What to beware of.</summary>
    public required IReadOnlyList<DemoCaution> Cautions { get; init; }

    /// <summary>Where the analysis comes from.</summary>
    public required DemoSource Source { get; init; }

    /// <summary>How a point value was chosen in a range.</summary>
    public required string TypicalNote { get; init; }

    /// <summary>What is invented.</summary>
    public required DemoYardFigures Demo { get; init; }

    /// <summary>What the mass balance needs.</summary>
    public MaterialComposition Composition => new() { Analysis = Analysis, MetallicYieldPercent = MetallicYieldPercent, RecoveryPercent = RecoveryPercent };
}

/// <summary>Invented figures of a material.</summary>
/// <param name="PricePerTonne">Price of 1000 kg in the shop's currency.</param>
/// <param name="StockKg">Stock, kg.</param>
/// <param name="TypicalPieceKg">Mass of a usual piece, kg, for information: the plan weighs freely. Null for granules and powders.</param>
/// <param name="BulkDensityTonnesPerM3">Bulk density, t/m³; of steel scrap from the European list or from memory.</param>
/// <param name="Lots">Lots as they stand on its bags, each with the same share of the stock; null where it lies in one pile.</param>
/// <param name="Bins">Bin of each lot, or of the pile; null where it has none.</param>
public sealed record DemoYardFigures(
    decimal PricePerTonne, double StockKg, double? TypicalPieceKg, double? BulkDensityTonnesPerM3, IReadOnlyList<string>? Lots = null, IReadOnlyList<string>? Bins = null);
