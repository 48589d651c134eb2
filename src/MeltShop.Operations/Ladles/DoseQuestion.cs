using MeltShop.Metallurgy.Chain;
using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Storing;
using MeltShop.Records.Reading.Ladles;

namespace MeltShop.Operations.Ladles;

/// <summary>Magnesium for iron that is already in the ladle.</summary>
/// <param name="Kg">Alloy, or magnesium of the wire, kg.</param>
/// <param name="Metres">Wire, m; null without wire.</param>
/// <param name="Seconds">Feed time, s; null where the speed is not known.</param>
/// <param name="MgNowPercent">Predicted before it, %.</param>
/// <param name="MgPercent">Predicted after it, %.</param>
public sealed record DoseAnswer(double Kg, double? Metres, double? Seconds, double MgNowPercent, double MgPercent);

/// <summary>
/// How much magnesium a ladle needs on its weighed mass, the same for the page that shows it and the operation that records it. It goes
/// by wire, plunging or converter, never into a pocket.
/// </summary>
public static class DoseQuestion
{
    /// <summary>Filling of a wire: its magnesium alone is reckoned with.</summary>
    public static MaterialComposition Wire { get; } = new() { Analysis = Analysis.Of((Element.Mg, 100)) };

    /// <summary>The dose that brings the iron to its target at the planned last mould; null where none is needed, or none gets there.</summary>
    /// <param name="ironKg">Iron in the ladle, kg.</param>
    public static DoseAnswer? For(PocketCardView card, LadleTimes times, double ironKg, LadleEquipment station, DateTimeOffset at)
    {
        ArgumentNullException.ThrowIfNull(card);
        ArgumentNullException.ThrowIfNull(station);
        if (card is not { Problem: { } stored, TargetMgPercent: { } target, MinutesToLastMould: { } minutes } || !(ironKg > 0)) return null;
        var problem = StoredJson.Value<TreatmentProblem>(stored);
        var (fade, left) = (problem.Recipe.Fade, problem.Recipe.SulphurLeftPercent);
        var now = MagnesiumNow.Percent(times, fade, at);
        var elapsed = times is { MgPercent: not null, MgFrom: { } from } ? (at - from).TotalMinutes : 0;
        var wanted = fade.Before(target, Math.Max(0, minutes - elapsed));
        var arrival = Arrival(problem, station, station.MgRecoveryPercent);
        var sulphur = times.MgPercent is null ? problem.BaseAnalysis.OrZero(Element.S) : left;
        if (wanted <= now || TreatmentBalance.AlloyPerKilogram(arrival, wanted - now, sulphur, left) is not { } perKilogram || !double.IsFinite(perKilogram)) return null;
        var kg = perKilogram * ironKg;
        return new(kg, Metres(kg, station), Seconds(kg, station), now, After(problem, times, ironKg, kg, station, station.MgRecoveryPercent, now));
    }

    /// <summary>Magnesium after a dose, %.</summary>
    internal static double After(
        TreatmentProblem problem, LadleTimes times, double ironKg, double kg, LadleEquipment station, double recoveryPercent, double mgNowPercent)
    {
        var analysis = times.MgPercent is null ? problem.BaseAnalysis : Analysis.Of((Element.S, problem.Recipe.SulphurLeftPercent), (Element.Mg, mgNowPercent));
        return TreatmentBalance.After(Metal.Of(ironKg, analysis), Arrival(problem, station, recoveryPercent), kg, problem.Recipe.SulphurLeftPercent).Percent(Element.Mg);
    }

    private static double? Metres(double kg, LadleEquipment station) => station.WireMgGramsPerMetre is { } grams ? CoredWire.MetresOf(kg, grams) : null;

    private static double? Seconds(double kg, LadleEquipment station) =>
        Metres(kg, station) is { } metres && station.WireMetresPerMinute is { } speed ? CoredWire.FeedSeconds(metres, speed) : null;

    private static Arrival Arrival(TreatmentProblem problem, LadleEquipment station, double recoveryPercent) =>
        (problem.Recipe with
        {
            Alloy = station.WireMgGramsPerMetre is null ? problem.Recipe.Alloy : Wire,
            MgRecoveryPercent = recoveryPercent,
            RecoveryTemperatureC = station.RecoveryTemperatureC,
        }).ArrivalAt(problem.TemperatureC);
}
