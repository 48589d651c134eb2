using MeltShop.Metallurgy.Pouring;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Storing;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Ladles;

namespace MeltShop.Operations.Ladles;

/// <summary>Residual magnesium of a ladle at an instant, by its clock and its fade.</summary>
public static class MagnesiumNow
{
    /// <summary>Predicted, %; 0 for grey iron and before there is a prediction.</summary>
    public static double Percent(LadleTimes times, Fade? fade, DateTimeOffset at)
    {
        ArgumentNullException.ThrowIfNull(times);
        return times is { MgPercent: { } start, MgFrom: { } from } && fade is not null ? fade.After(start, Minutes(from, at)) : 0;
    }

    /// <summary>The same as a band; null where none is known.</summary>
    internal static MagnesiumRange? Range(LadleTimes times, PocketCard card, DateTimeOffset at) =>
        times is { MgLeastPercent: { } least, MgMostPercent: { } most, MgFrom: { } from } && FadeOf(card) is { } fade
            ? new MagnesiumRange(least, most).After(Minutes(from, at), FastestFade(card) ?? fade, Linear(card.MgFadeLeastPercentPerMinute) ?? fade) : null;

    internal static Fade? FadeOf(PocketCard card) =>
        card.Problem is { } problem ? StoredJson.Value<TreatmentProblem>(problem).Recipe.Fade : null;

    /// <summary>By the band of the ladle's figure; null where it has none.</summary>
    internal static Fade? FastestFade(PocketCard card) => Linear(card.MgFadeMostPercentPerMinute);

    private static Fade.Linear? Linear(double? percentPerMinute) => percentPerMinute is { } fade ? new(fade) : null;

    private static double Minutes(DateTimeOffset from, DateTimeOffset at) => Math.Max(0, (at - from).TotalMinutes);
}
