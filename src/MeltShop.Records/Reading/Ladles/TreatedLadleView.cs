using MeltShop.Records.Ladles;

namespace MeltShop.Records.Reading.Ladles;

/// <summary>One filling of a ladle with its cards, taps and decisions, corrected ones included.</summary>
public sealed record TreatedLadleView(
    long Id, Guid Version, long HeatId, int Ordinal, long LadleId, string LadleCode, string LadleName, TreatedLadleState State,
    DateTimeOffset? ReactionEndedAt, IReadOnlyList<PocketCardView> Cards, IReadOnlyList<TapView> Taps, IReadOnlyList<CastingDecisionView> Decisions)
{
    /// <summary>Every ladle begins with its card.</summary>
    internal const TreatedLadleState First = TreatedLadleState.Prepared;

    /// <summary>What came from other ladles, kg.</summary>
    public double CameKg { get; init; }

    /// <summary>Greatest mass that leaves its freeboard, kg.</summary>
    public double FillLimitKg { get; init; }

    /// <summary>All the iron that was in it: tapped, and poured in from other ladles, kg.</summary>
    public double InKg => (Tap?.Kg ?? 0) + CameKg;

    /// <summary>The card in force.</summary>
    public PocketCardView? Card => Cards.LastOrDefault(c => !c.Origin.IsCorrected);

    /// <summary>The tap in force.</summary>
    public TapView? Tap => Taps.LastOrDefault(t => !t.Origin.IsCorrected);

    /// <summary>The last word about its castings; what was decided about a test unit apart is not it.</summary>
    public CastingDecisionView? Decision => Decisions.LastOrDefault(d => !d.Origin.IsCorrected && d.TestUnit is null);

    /// <summary>The last word about each test unit that was decided about apart.</summary>
    public IEnumerable<CastingDecisionView> Apart => Decisions.Where(d => !d.Origin.IsCorrected && d.TestUnit is not null)
        .GroupBy(d => d.TestUnit!, StringComparer.OrdinalIgnoreCase).Select(unit => unit.Last());
}

/// <inheritdoc cref="PocketCard"/>
public sealed record PocketCardView(
    Origin Origin, double PlannedKg, double TemperatureC, double? BaseSulphurPercent, double? TargetMgPercent, double? MgFloorPercent,
    double? MinutesToLastMould, long? AlloyMaterialId, string? AlloyCode, string? AlloyName, double? AlloyKg, long InoculantMaterialId,
    string InoculantCode, string InoculantName, double InoculantKg, double StopWeightKg, string? Problem, string? Answer, string Versions)
{
    public string? Process { get; init; }
    public double? NeededAlloyKg { get; init; }
    public double? LargestIronKg { get; init; }
    public string? CoverName { get; init; }
    public double? CoverKg { get; init; }
    public double? StreamInoculantKg { get; init; }
    public double? MouldInoculantKg { get; init; }
    public string? PearliteName { get; init; }
    public double? PearliteKg { get; init; }
    public string? AlloyLot { get; init; }
    public string? CoverLot { get; init; }
    public string? InoculantLot { get; init; }
    public string? PearliteLot { get; init; }
    public string? Checks { get; init; }

    /// <summary>What it started from and was corrected since.</summary>
    public IReadOnlyList<StaleNote> Stale { get; init; } = [];
}

/// <inheritdoc cref="Tap"/>
public sealed record TapView(Origin Origin, double Kg, double? TemperatureC, double? MgAfterTreatmentPercent, double? MinutesToFloor)
{
    /// <summary>By a scale: with the full ladle and with the empty one, kg.</summary>
    public double? GrossKg { get; init; }

    public double? TareKg { get; init; }

    /// <summary>The ladle that it was filled from; null for a tap of a furnace.</summary>
    public long? FromTreatedLadleId { get; init; }

    public double? MgLeastPercent { get; init; }
    public double? MgMostPercent { get; init; }
}

/// <inheritdoc cref="CastingDecision"/>
public sealed record CastingDecisionView(Origin Origin, CastingVerdict Verdict, long? SampleId, bool FollowsCorrection = false)
{
    /// <summary>What was seen, as JSON; null for what was decided before it was kept.</summary>
    public string? Seen { get; init; }

    /// <summary>The test unit that it is about apart from the ladle; null for the castings of the ladle.</summary>
    public string? TestUnit { get; init; }

    /// <summary>The person gave the password again.</summary>
    public bool WasSigned { get; init; }

    /// <summary>For a downgrade: the grade that the castings are now.</summary>
    public string? GradeCode { get; init; }

    public string? ReMarking { get; init; }
    public string? Consent { get; init; }

    /// <summary>What it rested on and was corrected since; empty while it stands as it was made.</summary>
    public IReadOnlyList<StaleNote> Stale { get; init; } = [];
}
