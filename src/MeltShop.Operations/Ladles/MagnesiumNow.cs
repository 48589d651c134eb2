using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Storing;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Ladles;

namespace MeltShop.Operations.Ladles;

/// <summary>Residual magnesium of a ladle at an instant, by its clock and its fade; and of two ladles poured together.</summary>
public static class MagnesiumNow
{
    /// <summary>Predicted, %; 0 for grey iron and before there is a prediction.</summary>
    public static double Percent(LadleTimes times, Fade? fade, DateTimeOffset at)
    {
        ArgumentNullException.ThrowIfNull(times);
        return times is { MgPercent: { } start, MgFrom: { } from } && fade is not null ? fade.After(start, Math.Max(0, (at - from).TotalMinutes)) : 0;
    }

    /// <summary>Iron of another ladle poured onto iron that is fading: the one that comes loses by the re-ladling, at the most that is printed.</summary>
    public static double Mixed(double inLadleKg, double inLadlePercent, double comesKg, double comesPercent)
    {
        var comes = ReLadling.After(comesPercent, 1, ReLadling.LossPercent.Most);
        return Of(inLadleKg, inLadlePercent).Plus(Of(comesKg, comes)).Percent(Element.Mg);
    }

    internal static Fade? FadeOf(PocketCard card) =>
        card.Problem is { } problem ? StoredJson.Value<TreatmentProblem>(problem).Recipe.Fade : null;

    private static Metal Of(double kg, double mgPercent) => Metal.Of(kg, Analysis.Of((Element.Mg, mgPercent)));
}
