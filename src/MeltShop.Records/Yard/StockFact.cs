using MeltShop.Records.Keeping;

namespace MeltShop.Records.Yard;

public enum StockKind
{
    Received,
    Charged,
    Added,
    Counted,
}

/// <summary>A line of the yard's ledger; the stock is the sum of its lines.</summary>
public sealed class StockFact : Fact
{
    public required long MaterialId { get; init; }
    public required StockKind Kind { get; init; }

    /// <summary>Change of the stock, kg; negative when something leaves the yard.</summary>
    public required double Kg { get; init; }

    public long? HeatId { get; init; }

    /// <summary>The lot as it stands on the bag; null where nobody said, and for a count of all that lies there.</summary>
    public string? Lot { get; init; }
}
