using MeltShop.Records.Keeping;

namespace MeltShop.Records.Heats;

public sealed class TemperatureReading : Fact
{
    public required long HeatId { get; init; }
    public required double TemperatureC { get; init; }
    public long? TreatedLadleId { get; init; }
}
