using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Route;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.History;

namespace MeltShop.Records.Reading.Laboratory;

/// <summary>What a trend is drawn of.</summary>
/// <param name="Quantity">An element, or what is reckoned from the means of one sample.</param>
/// <param name="InstrumentId">One instrument; <see cref="NoInstrument"/> for coins of which nobody said it; null for all.</param>
/// <param name="Treated">Iron after the treatment; else of the furnace.</param>
public sealed record TrendFilter(WindowQuantity Quantity, long? GradeId = null, long? FurnaceId = null, bool Treated = false, long? InstrumentId = null)
{
    public const long NoInstrument = 0;
}

/// <summary>Samples of one quantity, by the heats in the order in which they were started.</summary>
/// <param name="Points">In order of time.</param>
/// <param name="Firsts">The first bath sample of each heat that is shown, whatever the trend is of.</param>
/// <param name="Instruments">Those that read the points of the heats shown, whichever is chosen: by name, null for coins of which nobody said it.</param>
/// <param name="Changes">Windows that were changed since the earliest first coin.</param>
/// <param name="Next">Where older ones begin; null where there are none.</param>
public sealed record TrendView(IReadOnlyList<TrendPoint> Points, IReadOnlyList<FirstSample> Firsts, IReadOnlyList<TrendInstrument> Instruments, IReadOnlyList<WindowChange> Changes, HistoryPlace? Next)
{
    /// <summary>What some of the points lack, and count as 0 although it enters.</summary>
    public IReadOnlyList<Element> TakenAsZero { get; init; } = [];
}

/// <param name="Id"><see cref="TrendFilter.NoInstrument"/> where nobody said which.</param>
public sealed record TrendInstrument(long Id, string? Name);

/// <param name="Value">In the unit of its quantity.</param>
public sealed record TrendPoint(long SampleId, long HeatId, string HeatNumber, DateTimeOffset At, SampleKind Kind, string? Coin, double Value, long InstrumentId, string? Instrument)
{
    /// <summary>The first coin of its heat, of treated iron of its ladle, whoever read it and whatever it lacks: the iron was not corrected by another one before it.</summary>
    public bool IsFirst { get; init; }

    /// <summary>What whoever took it or read it said of it; null where nobody did.</summary>
    public string? Remarks { get; init; }

    /// <inheritdoc cref="TrendView.TakenAsZero"/>
    public IReadOnlyList<Element> TakenAsZero { get; init; } = [];
}

/// <param name="Means">By element, below detection as the limit of detection; without the carbon that a spark read of a grey coin.</param>
public sealed record FirstSample(long SampleId, long HeatId, long GradeId, DateTimeOffset At, Analysis Means)
{
    /// <summary>Read below detection by a burn that counts: may be anything down to 0.</summary>
    public IReadOnlyList<Element> Unseen { get; init; } = [];
}
