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

    /// <summary>The bin of what lies outside of every lot; null where nobody said.</summary>
    public string? PileBin { get; init; }

    /// <summary>What lies outside of every lot, kg; null where the stock was never counted.</summary>
    public double? PileKg => StockKg - Lots.Where(lot => lot.IsThere).Sum(lot => lot.LeftKg);

    /// <summary>The bins in which some of it lies.</summary>
    public IReadOnlyList<string> Bins() =>
        [.. Lots.Where(lot => lot.IsThere).Select(lot => lot.Bin).Append(PileKg is null or > 0 ? PileBin : null).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase).Order(NaturalOrder.Names)];

    /// <summary>The material without what lies in some bins, as if that were not there.</summary>
    public MaterialView Without(IReadOnlyCollection<string> bins)
    {
        bool Lies(string? bin) => bin is not null && bins.Contains(bin, StringComparer.OrdinalIgnoreCase);
        if (!Bins().Any(Lies)) return this;
        // Of a pile that was never counted nobody knows how much is out of reach: all of it.
        var pileKg = Lies(PileBin) ? Math.Max(0, PileKg ?? 0) : 0;
        return this with
        {
            Lots = [.. Lots.Where(lot => !lot.IsThere || !Lies(lot.Bin))],
            PileBin = Lies(PileBin) ? null : PileBin,
            StockKg = (StockKg ?? 0) - pileKg - Lots.Where(lot => lot.IsThere && Lies(lot.Bin)).Sum(lot => lot.LeftKg),
        };
    }

    /// <summary>What the balances need of it. Whoever asks has looked whether the yield is known.</summary>
    /// <param name="stage">When it comes into the melt.</param>
    /// <exception cref="InvalidOperationException">Its yield is not known.</exception>
    public MaterialComposition Composition(RecoveryStage stage) => new()
    {
        Analysis = Analysis?.Analysis() ?? Metallurgy.Elements.Analysis.Empty,
        MetallicYieldPercent = MetallicYieldPercent ?? throw new InvalidOperationException($"The yield of {Code} is not known."),
        RecoveryPercent = Percents.Where(p => p.RecoveryAt(stage) is not null).ToDictionary(p => p.Element, p => p.RecoveryAt(stage)!.Value),
    };

    /// <summary>Elements that are reckoned into the bath with the recovery of the charge, as nobody said another; of an alloy or a carburiser also where nobody said that one.</summary>
    public IReadOnlyList<Element> AsWithTheCharge() =>
    [
        .. Percents.Where(p => p is { BathRecoveryPercent: null, Percent: > 0 } && (p.RecoveryPercent is not null || Kind is MaterialKind.FerroAlloy or MaterialKind.Carburiser))
            .Select(p => p.Element),
    ];

    /// <summary>
    /// By the yard's own recoveries a tenth or more of what the cold charge would make of it is lost where it goes into liquid iron, as of silicon carbide: what is
    /// reckoned with the charge has to lie low in it. False where the yield is not known.
    /// </summary>
    public bool IsLostLate => MetallicYieldPercent is not null
        && Arrival.PerKilogram(Composition(RecoveryStage.Bath)).LiquidKg <= 0.9 * Arrival.PerKilogram(Composition(RecoveryStage.Charge)).LiquidKg;

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
