using MeltShop.Records.Keeping;

namespace MeltShop.Records.Heats;

public enum HeatState
{
    Charging,
    Bath,
    Tapping,
    Closed,
    Cancelled,
}

/// <summary>Current state of a heat; what happened in it are facts that name it.</summary>
public sealed class Heat : IVersioned
{
    public long Id { get; init; }

    /// <summary>Site-year-number, given when the heat starts: <c>HB-2026-0017</c>.</summary>
    public required string Number { get; init; }

    public required long SiteId { get; init; }
    public required long FurnaceId { get; set; }
    public required long GradeId { get; set; }
    public required long PlanId { get; init; }
    public required HeatState State { get; set; }
    public required DateTimeOffset StartedAt { get; set; }
    public DateTimeOffset? ClosedAt { get; set; }

    /// <summary>Liquid that was in the furnace at the start, kg.</summary>
    public required double HeelKg { get; set; }

    public Guid Version { get; set; }
}
