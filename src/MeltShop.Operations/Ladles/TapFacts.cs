using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Storing;
using MeltShop.Records.Ladles;

namespace MeltShop.Operations.Ladles;

/// <summary>What follows from the mass really tapped, the same for a tap and for its correction.</summary>
internal static class TapFacts
{
    /// <summary>The iron of the pocket's card with the mass tapped; null for grey iron.</summary>
    public static TreatedIron? Iron(PocketCard card, double kg, double? temperatureC) => card.Problem is { } problem
        ? PocketQuestion.AfterTap(StoredJson.Value<TreatmentProblem>(problem), card.AlloyKg!.Value, kg, temperatureC)
        : null;

    public static Tap Tap(
        this Writing writing, TreatedLadle treated, double kg, double? temperatureC, TreatedIron? iron, double? floorPercent, DateTimeOffset observedAt,
        long? supersedesId = null, string? reason = null) => new()
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
            TemperatureC = temperatureC,
            MgAfterTreatmentPercent = iron?.MgPercent,
            MinutesToFloor = iron is not null && iron.MgPercent > floorPercent ? iron.MinutesTo(floorPercent.Value) : null,
        };
}
