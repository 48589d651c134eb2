namespace MeltShop.Records.Sites;

/// <summary>Last heat number given in a year; counted up in the transaction that starts the heat, so no number is lost or doubled.</summary>
public sealed class HeatCounter
{
    public required long SiteId { get; init; }
    public required int Year { get; init; }
    public int Last { get; set; }
}
