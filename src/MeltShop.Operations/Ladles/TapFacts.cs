using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Storing;
using MeltShop.Records.Ladles;

namespace MeltShop.Operations.Ladles;

/// <summary>What follows from the mass really tapped, the same for a tap and for its correction.</summary>
internal static class TapFacts
{
    /// <summary>How far a mass that was weighed may be off, %: 1 % of error is frequent (P.-M. Cabanne, S.G. Iron Conclave, Mumbai, 2011).</summary>
    private const double ScalePercent = 1;

    /// <summary>The iron of the pocket's card with the mass tapped; null for grey iron.</summary>
    public static TreatedIron? Iron(PocketCard card, double kg, double? temperatureC) => card is { Problem: { } problem, AlloyKg: { } alloyKg }
        ? PocketQuestion.AfterTap(StoredJson.Value<TreatmentProblem>(problem), alloyKg, kg, temperatureC)
        : null;

    /// <summary>
    /// The band of what the pocket made: the recovery as far as the ladle's figures leave it open, the mass as far as a scale does, the
    /// fastest fade. Null where the card knows none.
    /// </summary>
    public static MagnesiumBand? Band(PocketCard card, double kg, double? temperatureC)
    {
        if (card is not { Problem: { } stored, AlloyKg: { } alloyKg, MgFloorPercent: { } floor, MgRecoveryLeastPercent: { } least, MgRecoveryMostPercent: { } most })
        {
            return null;
        }

        var problem = StoredJson.Value<TreatmentProblem>(stored);
        var t = temperatureC ?? problem.TemperatureC;
        var band = TreatmentBand.Of(problem with { IronKg = kg, AtMinutes = 0 }, alloyKg, ScalePercent, (least, most), (t, t));
        var fade = MagnesiumNow.FastestFade(card) ?? problem.Recipe.Fade;
        return new(band.LeastMgPercent, band.MostMgPercent, band.LeastMgPercent > floor ? fade.MinutesTo(band.LeastMgPercent, floor) : null);
    }

    public static Tap Tap(
        this Writing writing, TreatedLadle treated, PocketCard card, double kg, double? temperatureC, DateTimeOffset observedAt, DateTimeOffset? startedAt,
        long? supersedesId = null, string? reason = null, (double? GrossKg, double? TareKg) scale = default)
    {
        var (iron, band, floorPercent) = (Iron(card, kg, temperatureC), Band(card, kg, temperatureC), card.MgFloorPercent);
        return new()
        {
            EntryKey = writing.Stamp.EntryKey,
            PersonId = writing.Stamp.PersonId,
            ObservedAt = observedAt,
            EnteredAt = writing.Stamp.EnteredAt,
            SupersedesId = supersedesId,
            Reason = reason,
            TreatedLadleId = treated.Id,
            HeatId = treated.HeatId,
            Kg = kg,
            GrossKg = scale.GrossKg,
            TareKg = scale.TareKg,
            TemperatureC = temperatureC,
            StartedAt = startedAt,
            MgAfterTreatmentPercent = iron?.MgPercent,
            MinutesToFloor = iron is not null && iron.MgPercent > floorPercent ? iron.MinutesTo(floorPercent.Value) : null,
            MgLeastPercent = band?.LeastPercent,
            MgMostPercent = band?.MostPercent,
            LeastMinutesToFloor = band?.LeastMinutesToFloor,
        };
    }
}

/// <summary>Magnesium at the start of its clock as a band, %.</summary>
/// <param name="LeastMinutesToFloor">Minutes from the least to the floor; null where it starts under it.</param>
internal sealed record MagnesiumBand(double LeastPercent, double MostPercent, double? LeastMinutesToFloor);
