using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;

namespace MeltShop.Records.Reading.Floor;

/// <summary>What waits for somebody's hand.</summary>
public enum WaitingFor
{
    /// <summary>A heat is charging: its charge is to be weighed in.</summary>
    Charging,

    /// <summary>An accepted correction of a bath has a material that was not weighed since.</summary>
    Correction,

    /// <summary>A bath that was never sampled, or was added to since its last sample.</summary>
    BathSample,

    /// <summary>A prepared ladle: it is to be tapped.</summary>
    Tap,

    /// <summary>A tapped ladle whose end of reaction nobody has said.</summary>
    ReactionEnd,

    /// <summary>A ladle whose time to pour is over while there must still be iron in it.</summary>
    Rest,

    /// <summary>A poured ladle without a sample of its last metal.</summary>
    LastMetal,

    /// <summary>Castings that are held until somebody decides.</summary>
    Decision,
}

/// <param name="HeatId">The heat that it belongs to.</param>
/// <param name="TreatedLadleId">The ladle, where it is about one.</param>
/// <param name="HeatNumber">The heat's number.</param>
/// <param name="GradeCode">The heat's grade.</param>
/// <param name="LadleOrdinal">The ladle's running number in its heat, where it is about one.</param>
/// <param name="Since">How long it has waited.</param>
public sealed record WaitingRow(
    WaitingFor For, long HeatId, long? TreatedLadleId, string HeatNumber, string GradeCode, int? LadleOrdinal, DateTimeOffset Since)
{
    /// <summary>All that waits on the floor, whoever it waits for; what has waited longest first.</summary>
    /// <param name="overSince">When a ladle's time to pour was over; null where it is not.</param>
    public static IReadOnlyList<WaitingRow> Of(FloorView floor, Func<FloorLadle, DateTimeOffset?> overSince)
    {
        ArgumentNullException.ThrowIfNull(floor);
        var rests = floor.OpenLadles.Where(ladle => ladle.Content is { AtLeastKg: > 0 })
            .Select(ladle => overSince(ladle) is { } since ? Row(ladle, WaitingFor.Rest, since) : null);
        var heats = floor.Furnaces.Select(f => f.Heat).OfType<FloorHeat>().Select(Of);
        var ladles = floor.OpenLadles.Concat(floor.HeldLadles).Select(Of);
        return [.. heats.Concat(ladles).Concat(rests).OfType<WaitingRow>().OrderBy(row => row.Since)];
    }

    /// <summary>A bath waits for its addition once a correction was accepted, and for a sample once something went in.</summary>
    private static WaitingRow? Of(FloorHeat heat)
    {
        return heat switch
        {
            { State: HeatState.Charging } => Row(WaitingFor.Charging, heat.StartedAt),
            { State: HeatState.Bath, CorrectedAt: { } corrected } when heat.AddedToAt is null || corrected > heat.AddedToAt => Row(WaitingFor.Correction, corrected),
            { State: HeatState.Bath } when heat.Sample is null || heat.AddedToAt > heat.Sample.Origin.ObservedAt => Row(WaitingFor.BathSample, heat.AddedToAt ?? heat.StartedAt),
            _ => null,
        };

        WaitingRow Row(WaitingFor what, DateTimeOffset since) => new(what, heat.Id, null, heat.Number, heat.GradeCode, null, since);
    }

    private static WaitingRow? Of(FloorLadle ladle) => ladle switch
    {
        { State: TreatedLadleState.Prepared } => Row(ladle, WaitingFor.Tap, ladle.Since),
        { State: TreatedLadleState.Tapped } => Row(ladle, WaitingFor.ReactionEnd, ladle.Since),
        { State: TreatedLadleState.Pouring, LastMetalAt: { } sampled } => Row(ladle, WaitingFor.Decision, sampled),
        { State: TreatedLadleState.Pouring } => Row(ladle, WaitingFor.LastMetal, ladle.Since),
        { State: TreatedLadleState.Held } => Row(ladle, WaitingFor.Decision, ladle.Since),
        _ => null,
    };

    private static WaitingRow Row(FloorLadle ladle, WaitingFor what, DateTimeOffset since) =>
        new(what, ladle.HeatId, ladle.Id, ladle.HeatNumber, ladle.GradeCode, ladle.Ordinal, since);
}
