using MeltShop.Records.Keeping;

namespace MeltShop.Records.Yard;

public sealed class PriceFact : Fact
{
    public required long MaterialId { get; init; }
    public required decimal PricePerTonne { get; init; }
}
