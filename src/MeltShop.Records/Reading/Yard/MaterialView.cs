using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Yard;

namespace MeltShop.Records.Reading.Yard;

/// <summary>A material with its analysis in force. Masses in kg, prices per 1000 kg weighed.</summary>
/// <param name="Uses">Where it may go.</param>
/// <param name="StockKg">Null where it was never counted: unknown, not none.</param>
/// <param name="MetallicYieldPercent">Null where nobody knows.</param>
/// <param name="Cautions">Caution codes.</param>
/// <param name="Analysis">Null where none was ever given.</param>
public sealed record MaterialView(
    long Id, Guid Version, string Code, string Name, MaterialKind Kind, MaterialUses Uses, decimal PricePerTonne, double? StockKg,
    double? MetallicYieldPercent, double? PieceKg, double? BulkDensityTonnesPerM3, double? MaxSharePercent, IReadOnlyList<string> Cautions,
    bool IsDemo, bool IsActive, MaterialAnalysisView? Analysis)
{
    /// <summary>Its lots, the oldest first, used-up ones included; empty where nobody booked one, and where they were not asked for.</summary>
    public IReadOnlyList<LotView> Lots { get; init; } = [];

    /// <summary>What the balances need of it. Whoever asks has looked whether the yield is known.</summary>
    /// <param name="stage">When it comes into the melt.</param>
    /// <exception cref="InvalidOperationException">Its yield is not known.</exception>
    public MaterialComposition Composition(RecoveryStage stage) => new()
    {
        Analysis = Analysis?.Analysis() ?? Metallurgy.Elements.Analysis.Empty,
        MetallicYieldPercent = MetallicYieldPercent ?? throw new InvalidOperationException($"The yield of {Code} is not known."),
        RecoveryPercent = Percents.Where(p => p.RecoveryAt(stage) is not null).ToDictionary(p => p.Element, p => p.RecoveryAt(stage)!.Value),
    };

    /// <summary>Elements that are reckoned into the bath with the recovery of the charge, as nobody said another.</summary>
    public IReadOnlyList<Element> AsWithTheCharge() => [.. Percents.Where(p => p is { RecoveryPercent: not null, BathRecoveryPercent: null, Percent: > 0 }).Select(p => p.Element)];

    /// <summary>Standard deviations of the percents that have one, percentage points.</summary>
    public IReadOnlyDictionary<Element, double> Spreads() =>
        Percents.Where(p => p.Spread is not null).ToDictionary(p => p.Element, p => p.Spread!.Value);

    private IReadOnlyList<MaterialPercentView> Percents => Analysis?.Percents ?? [];
}

/// <param name="Percents">In report order.</param>
public sealed record MaterialAnalysisView(
    long Id, string Source, string SourceKind, DateTimeOffset ObservedAt, string? Reason, IReadOnlyList<MaterialPercentView> Percents)
{
    public Analysis Analysis() => Metallurgy.Elements.Analysis.Of(Percents.Select(p => KeyValuePair.Create(p.Element, p.Percent)));
}

/// <param name="Spread">Standard deviation, percentage points; null where it is not known.</param>
/// <param name="RecoveryPercent">Share that arrives in the melt with the charge; null where all of it does.</param>
/// <param name="BathRecoveryPercent">Share that arrives when it goes into liquid iron; null where nobody said.</param>
public sealed record MaterialPercentView(Element Element, double Percent, double? Spread, double? RecoveryPercent, double? BathRecoveryPercent = null)
{
    public double? RecoveryAt(RecoveryStage stage) => stage.Of(RecoveryPercent, BathRecoveryPercent);
}
