using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.History;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>What a trend is drawn of.</summary>
/// <param name="Treated">Iron after the treatment; else of the furnace.</param>
public sealed record TrendFilter(Element Element, long? GradeId = null, long? FurnaceId = null, bool Treated = false);

/// <summary>Samples of one element, by the heats in the order in which they were started.</summary>
/// <param name="Points">In order of time.</param>
/// <param name="Firsts">The first bath sample of each heat that is shown, whatever element the trend is of.</param>
/// <param name="Next">Where older ones begin; null where there are none.</param>
public sealed record TrendView(IReadOnlyList<TrendPoint> Points, IReadOnlyList<FirstSample> Firsts, HistoryPlace? Next);

public sealed record TrendPoint(long SampleId, long HeatId, string HeatNumber, DateTimeOffset At, SampleKind Kind, string? Coin, double Percent);

/// <param name="Means">By element; without the carbon of a grey coin.</param>
public sealed record FirstSample(long HeatId, long GradeId, DateTimeOffset At, Analysis Means);
