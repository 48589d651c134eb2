using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Treatment;

namespace MeltShop.Metallurgy.Pouring;

/// <summary>One of the ladles that are poured into a heavy casting. Minute 0 is the start of the pour of the casting.</summary>
public sealed record JointLadle
{
    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>Iron in it, kg, over 0.</summary>
    public required double Kg { get; init; }

    /// <summary>Residual magnesium at the end of the reaction, %; null for grey iron.</summary>
    public double? MgPercent { get; init; }

    /// <summary>Least magnesium when its pour ends, %; null for grey iron.</summary>
    public double? MgFloorPercent { get; init; }

    /// <summary>How its magnesium falls.</summary>
    public Fade Fade { get; init; } = new Fade.Linear(0.001);

    /// <summary>Temperature at the end of the reaction, °C.</summary>
    public required double TemperatureC { get; init; }

    /// <summary>Least pouring temperature, °C; null where there is none.</summary>
    public double? LeastC { get; init; }

    /// <summary>Heat loss, K/min, 0 or more.</summary>
    public required double HeatLossKPerMinute { get; init; }

    /// <summary>Minutes that the inoculation may be old; null where there is no limit. It goes in during the tap.</summary>
    public double? InoculationMinutes { get; init; }

    /// <summary>Minutes from the start of its tap to the end of its reaction, transport to the mould included, 0 or more.</summary>
    public required double TreatmentMinutes { get; init; }

    /// <summary>Minute of the casting's pour at which this ladle begins to pour, and at which it is empty.</summary>
    public required double PourFrom { get; init; }

    /// <inheritdoc cref="PourFrom"/>
    public required double PourTo { get; init; }
}

/// <summary>What limits the age of a ladle's iron.</summary>
public enum JointLimit
{
    /// <summary>Residual magnesium.</summary>
    Magnesium,

    /// <summary>Pouring temperature.</summary>
    Temperature,

    /// <summary>Age of the inoculation.</summary>
    Inoculation,
}

/// <summary>One ladle's part of a joint pour.</summary>
/// <param name="Ladle">The ladle.</param>
/// <param name="LatestStart">Latest minute at which its tap may begin, before the pour negative: later, it is not ready.</param>
/// <param name="EarliestStart">Earliest minute: sooner, its iron is too old when its pour ends; null where nothing limits its age.</param>
/// <param name="First">The limit that comes first; null where there is none.</param>
/// <param name="MgAtEndPercent">Magnesium when its pour ends, started at the latest minute, %; null for grey iron.</param>
/// <param name="TemperatureAtEndC">Temperature then, °C.</param>
/// <param name="SlackMinutes">How long its iron can wait then, min, negative where it fails; null where nothing limits it.</param>
public sealed record JointPart(
    JointLadle Ladle, double LatestStart, double? EarliestStart, JointLimit? First, double? MgAtEndPercent, double TemperatureAtEndC, double? SlackMinutes)
{
    /// <summary>True where it passes every limit at its own pouring minute.</summary>
    public bool Passes => SlackMinutes is not < 0;
}

/// <summary>
/// Several ladles into one heavy casting. Each has to pass every limit at its own pouring minute; what they make together is
/// information and heals none of them.
/// </summary>
/// <param name="Parts">In the order in which they were given.</param>
/// <param name="Kg">All of the iron, kg.</param>
/// <param name="MixedMgPercent">Magnesium of the mixture, %; null where a ladle is of grey iron.</param>
public sealed record JointPour(IReadOnlyList<JointPart> Parts, double Kg, double? MixedMgPercent)
{
    /// <summary>True where each ladle passes on its own.</summary>
    public bool Passes => Parts.All(part => part.Passes);

    /// <summary>Works back from the pour.</summary>
    public static JointPour Of(IReadOnlyList<JointLadle> ladles)
    {
        ArgumentNullException.ThrowIfNull(ladles);
        var parts = ladles.Select(Part).ToList();
        var mixed = parts.Select(p => Metal.Of(p.Ladle.Kg, Analysis.Of((Element.Mg, p.MgAtEndPercent ?? 0)))).Aggregate(Metal.None, (sum, metal) => sum.Plus(metal));
        return new(parts, mixed.Kg, parts.Count > 0 && parts.All(p => p.MgAtEndPercent is not null) ? mixed.Percent(Element.Mg) : null);
    }

    /// <summary>The ladles that fail when one is late and the others, treated already, wait for it.</summary>
    /// <param name="late">Index of the late one; its own iron is fresh.</param>
    /// <param name="minutes">How late, min, 0 or more.</param>
    public IReadOnlyList<JointPart> FailWhenLate(int late, double minutes) => [.. Parts.Where((part, n) => n != late && part.SlackMinutes < minutes)];

    /// <summary>How late each one may be before another fails, min, in the order of the parts; null where nothing limits the others.</summary>
    public IReadOnlyList<double?> MostLate => [.. Parts.Select((_, late) => Parts.Where((_, n) => n != late).Min(part => part.SlackMinutes))];

    private static JointPart Part(JointLadle ladle)
    {
        var latest = ladle.PourFrom - ladle.TreatmentMinutes;
        var age = ladle.PourTo - ladle.PourFrom; // since the end of the reaction, begun at the latest
        IEnumerable<(JointLimit Limit, double Life)?> lives =
        [
            ladle is { MgPercent: { } mg, MgFloorPercent: { } floor } ? (JointLimit.Magnesium, ladle.Fade.MinutesTo(mg, floor)) : null,
            ladle is { LeastC: { } least, HeatLossKPerMinute: > 0 and var loss } ? (JointLimit.Temperature, (ladle.TemperatureC - least) / loss) : null,
            ladle.InoculationMinutes is { } minutes ? (JointLimit.Inoculation, minutes - ladle.TreatmentMinutes) : null,
        ];
        var first = lives.Where(life => life is not null).MinBy(life => life!.Value.Life);
        var slack = first?.Life - age;
        return new(
            ladle, latest, slack is { } left ? latest - left : null, first?.Limit, ladle.MgPercent is { } start ? ladle.Fade.After(start, age) : null,
            ladle.TemperatureC - ladle.HeatLossKPerMinute * age, slack);
    }
}
