namespace MeltShop.Web.Components.Fields;

/// <summary>What a field takes, ends included; null where a side is open.</summary>
public readonly record struct NumberRange(double? Least = null, double? Most = null)
{
    public bool Contains(double value) => !(value < Least) && !(value > Most);
}
