using MeltShop.Records.Keeping;

namespace MeltShop.Records.Ladles;

public enum InoculationPlace
{
    Ladle,
    Stream,
    Mould,
}

/// <summary>An inoculation after that of the card: the clock of the inoculation starts anew from it.</summary>
public sealed class LadleInoculation : Fact, IWithdrawable
{
    public required long TreatedLadleId { get; init; }
    public required InoculationPlace Place { get; init; }
    public required long MaterialId { get; init; }
    public required double Kg { get; init; }

    /// <summary>The lot as it stands on the bag; null where nobody said.</summary>
    public string? Lot { get; init; }
    public bool IsWithdrawn { get; init; }
}
