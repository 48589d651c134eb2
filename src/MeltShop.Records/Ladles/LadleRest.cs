using MeltShop.Records.Keeping;

namespace MeltShop.Records.Ladles;

/// <summary>
/// Iron that was left in a ladle and went into pig moulds or into another ladle. What went back into a furnace is a line of that
/// furnace's ledger.
/// </summary>
public sealed class LadleRest : Fact, IWithdrawable
{
    public required long TreatedLadleId { get; init; }

    /// <summary>The ladle that it was poured into; null for pig moulds.</summary>
    public long? IntoLadleId { get; init; }

    public required double Kg { get; init; }

    /// <summary>Magnesium of the iron in that ladle right after mixing, %, a prediction; null for pig moulds and grey iron.</summary>
    public double? MixedMgPercent { get; init; }

    /// <summary>Minutes from then until that ladle's floor; null where it starts under it.</summary>
    public double? MinutesToFloor { get; init; }

    public bool IsWithdrawn { get; init; }
}
