using MeltShop.Records.Ladles;

namespace MeltShop.Records.Reading.Ladles;

/// <summary>What was poured from a ladle and what its clocks count from; taken-back entries included.</summary>
/// <param name="PouredBack">Lines of furnaces' ledgers that came from it.</param>
/// <param name="CameKg">What other ladles brought into it, kg.</param>
public sealed record PouringView(
    LadleTimes Times, IReadOnlyList<MouldView> Moulds, IReadOnlyList<RestView> Rests, IReadOnlyList<InoculationView> Inoculations,
    IReadOnlyList<DoseView> Doses, IReadOnlyList<BackView> PouredBack, double CameKg)
{
    /// <summary>What came from other ladles, the first first.</summary>
    public IReadOnlyList<CameView> Came { get; init; } = [];

    /// <summary>Of those, the ladles that came back low themselves.</summary>
    public IReadOnlyList<LowSource> LowSources { get; init; } = [];

    /// <summary>Moulds that count.</summary>
    public IEnumerable<MouldView> Poured => Moulds.Where(m => m.Entry.Stands);

    /// <summary>What went out of it, kg.</summary>
    public double OutKg => Poured.Sum(m => m.Kg) + Rests.Where(r => r.Entry.Stands).Sum(r => r.Kg)
        + PouredBack.Where(p => !p.Origin.IsCorrected).Sum(p => p.Kg);
}

/// <summary>An entry at a ladle.</summary>
/// <param name="IsWithdrawn">It takes another one back.</param>
public sealed record LadleEntry(Origin Origin, bool IsWithdrawn)
{
    /// <summary>It counts: nobody took it back.</summary>
    public bool Stands => !IsWithdrawn && !Origin.IsCorrected;
}

/// <inheritdoc cref="PouredMould"/>
public sealed record MouldView(LadleEntry Entry, string Label, DateTimeOffset FirstAt, double Kg, PouringLimitKind? LateFor, DateTimeOffset? StopAt);

/// <inheritdoc cref="LadleRest"/>
/// <param name="IntoOrdinal">Number of the other ladle in its heat.</param>
public sealed record RestView(LadleEntry Entry, long? IntoLadleId, int? IntoOrdinal, double Kg, double? MixedMgPercent);

/// <inheritdoc cref="LadleInoculation"/>
public sealed record InoculationView(LadleEntry Entry, InoculationPlace Place, string MaterialName, double Kg, string? Lot);

/// <inheritdoc cref="MagnesiumDose"/>
/// <param name="MaterialName">Null for wire.</param>
public sealed record DoseView(Origin Origin, string? MaterialName, double Kg, double? WireMetres, double? FeedSeconds, double MgPercent, double? MinutesToFloor);

/// <summary>Iron that went back into a furnace.</summary>
public sealed record BackView(Origin Origin, double Kg);

/// <summary>Iron that came from another ladle.</summary>
/// <param name="FromOrdinal">Number of that ladle in its heat.</param>
/// <param name="CameMgPercent">Its magnesium before it was poured over, %.</param>
/// <param name="MixedMgPercent">Magnesium right after mixing, %.</param>
/// <param name="SampleId">The last sample of that ladle then; null where none was taken.</param>
public sealed record CameView(
    LadleEntry Entry, long FromLadleId, int FromOrdinal, string FromHeatNumber, double Kg, double? CameMgPercent, double? MixedMgPercent, long? SampleId)
{
    /// <summary>Of the mixture as a band, %; null where none is known.</summary>
    public (double Least, double Most)? MixedMgBand { get; init; }
}
