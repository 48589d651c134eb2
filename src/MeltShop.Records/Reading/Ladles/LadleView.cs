using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Sites;

namespace MeltShop.Records.Reading.Ladles;

/// <summary>What a pocket card is made from, and the treated ladle itself once there is one.</summary>
/// <param name="Ladles">Ladles in use.</param>
/// <param name="Alloys">Materials in use for the treatment: alloys and covers.</param>
/// <param name="Inoculants">Materials in use for inoculation.</param>
/// <param name="LastBath">Last sample in force from the furnace.</param>
/// <param name="Treated">Null while the ladle is being prepared.</param>
/// <param name="Samples">Samples of this ladle.</param>
/// <param name="Temperatures">Temperatures of this ladle; of the bath while it is being prepared.</param>
/// <param name="NextOrdinal">Number of the next ladle of this heat.</param>
public sealed record LadleView(
    HeatHeadView Heat, GradeView Grade, IReadOnlyList<LadleEquipment> Ladles, IReadOnlyList<MaterialView> Alloys,
    IReadOnlyList<MaterialView> Inoculants, SampleView? LastBath, TreatedLadleView? Treated, IReadOnlyList<SampleView> Samples,
    IReadOnlyList<TemperatureView> Temperatures, int NextOrdinal)
{
    /// <summary>Materials in use that may cover the treatment alloy.</summary>
    public IReadOnlyList<MaterialView> Covers { get; init; } = [];

    /// <summary>Coins of this ladle of which no result has come yet.</summary>
    public IReadOnlyList<CoinView> Coins { get; init; } = [];

    /// <summary>The instruments of the samples, by their id, with their checks.</summary>
    public IReadOnlyDictionary<long, InstrumentState> Instruments { get; init; } = new Dictionary<long, InstrumentState>();

    /// <summary>Last chill wedge of the heat in force; null where none was poured.</summary>
    public SampleView? LastWedge { get; init; }

    /// <summary>Copper and tin in use.</summary>
    public IReadOnlyList<MaterialView> PearliteFormers { get; init; } = [];

    /// <summary>What was poured from it; null while it is being prepared.</summary>
    public PouringView? Pouring { get; init; }

    /// <summary>What is left in it by the scales, kg; under zero where more went out than they gave, 0 before the tap.</summary>
    public double LeftKg => Treated?.Tap is { } tap && Pouring is { } pouring ? tap.Kg + pouring.CameKg - pouring.OutKg : 0;

    /// <summary>It was tapped and is empty by the scales.</summary>
    public bool IsEmptied => Treated?.Tap is not null && LeftKg < 1;

    /// <summary>Ladles that hold iron now, of any heat: where the rest of this one may go.</summary>
    public IReadOnlyList<OtherLadle> Others { get; init; } = [];

    /// <summary>Ladles, pouring furnaces and troughs into which this one may be poured empty: not itself, and none that is prepared, reacts or has iron left in it.</summary>
    public IReadOnlyList<LadleEquipment> Vessels { get; init; } = [];

    /// <summary>Heats that are in a furnace now: where the rest of this ladle may go back.</summary>
    public IReadOnlyList<OpenHeat> OpenHeats { get; init; } = [];
}

/// <summary>A ladle with iron in it.</summary>
/// <param name="FillLimitKg">Greatest mass that leaves its freeboard, kg.</param>
public sealed record OtherLadle(long Id, int Ordinal, string HeatNumber, string LadleName, double FillLimitKg)
{
    /// <summary>What is in it by the scales, kg.</summary>
    public double LeftKg { get; init; }
}

/// <summary>A heat in its furnace.</summary>
public sealed record OpenHeat(long Id, string Number, string FurnaceName);


/// <inheritdoc cref="Sites.Ladle"/>
public sealed record LadleEquipment(
    long Id, string Code, string Name, string Process, double FillLimitKg, double PocketKg, double MgRecoveryPercent,
    double? RecoveryTemperatureC, double MgFadePercentPerMinute, double HeatLossKPerMinute, string FiguresSource)
{
    public double? CapacityKg { get; init; }
    public double? TreatmentLossK { get; init; }
    public double? LeastPouringC { get; init; }
    public double? MostTreatmentC { get; init; }
    public double? InoculationMinutes { get; init; }
    public double? HouseMinutes { get; init; }
    public double? WireMgGramsPerMetre { get; init; }
    public double? WireMetresPerMinute { get; init; }
    public LadlePreheat? Preheat { get; init; }
    public DateTimeOffset? PreheatSeenAt { get; init; }

    /// <summary>When it was tapped into last; null where it never was.</summary>
    public DateTimeOffset? LastUsedAt { get; init; }

    public static LadleEquipment Of(Ladle ladle, DateTimeOffset? lastUsedAt)
    {
        ArgumentNullException.ThrowIfNull(ladle);
        return new(
            ladle.Id, ladle.Code, ladle.Name, ladle.Process, ladle.FillLimitKg, ladle.PocketKg, ladle.MgRecoveryPercent, ladle.RecoveryTemperatureC,
            ladle.MgFadePercentPerMinute, ladle.HeatLossKPerMinute, ladle.FiguresSource)
        {
            CapacityKg = ladle.CapacityKg, TreatmentLossK = ladle.TreatmentLossK, LeastPouringC = ladle.LeastPouringC, MostTreatmentC = ladle.MostTreatmentC,
            InoculationMinutes = ladle.InoculationMinutes, HouseMinutes = ladle.HouseMinutes, WireMgGramsPerMetre = ladle.WireMgGramsPerMetre,
            WireMetresPerMinute = ladle.WireMetresPerMinute, Preheat = ladle.Preheat, PreheatSeenAt = ladle.PreheatSeenAt, LastUsedAt = lastUsedAt,
        };
    }
}
