using MeltShop.Records.Keeping;

namespace MeltShop.Records.Sites;

/// <summary>
/// What the shop reckons with in every charge unless a plan says otherwise; the last one is in force. Null: it does not count. Money in the
/// site's currency.
/// </summary>
public sealed class ChargeRule : Fact
{
    /// <summary>What one point off a grade's aim is taken to cost, per 1000 kg of liquid.</summary>
    public double? NearnessPrice { get; init; }

    /// <summary>Cost of 1000 kg of slag.</summary>
    public double? SlagCostPerTonne { get; init; }

    public double? EnergyPricePerKWh { get; init; }

    /// <summary>What 1000 kg of cold charge take, kWh.</summary>
    public double? MeltingKWhPerTonne { get; init; }

    /// <summary>How much dearer returns may make a charge, per 1000 kg of them.</summary>
    public double? UseUpBonusPerTonne { get; init; }

    /// <summary>Room of the charging bucket, m³.</summary>
    public double? BucketM3 { get; init; }

    /// <summary>How often the bucket is filled for a charge.</summary>
    public double? BucketFillings { get; init; }
}
