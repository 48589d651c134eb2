using MeltShop.Records.Keeping;

namespace MeltShop.Records.Ladles;

public enum TreatedLadleState
{
    /// <summary>The pocket card is made and the alloy is in.</summary>
    Prepared,

    /// <summary>Tapped; the reaction runs.</summary>
    Tapped,

    /// <summary>The reaction has ended; the clocks run.</summary>
    Pouring,

    /// <summary>Its castings may not go.</summary>
    Held,

    /// <summary>Its castings may go.</summary>
    Released,

    /// <summary>Prepared and never tapped.</summary>
    Abandoned,
}

/// <summary>One filling of a ladle: the unit that is released or held with all its moulds.</summary>
public sealed class TreatedLadle : IVersioned
{
    public long Id { get; init; }
    public required long HeatId { get; init; }
    public required long LadleId { get; init; }

    /// <summary>From 1 within the heat.</summary>
    public required int Ordinal { get; init; }

    public required TreatedLadleState State { get; set; }
    public DateTimeOffset? ReactionEndedAt { get; set; }
    public Guid Version { get; set; }
}
