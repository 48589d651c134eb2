namespace MeltShop.Charging.Plans;

/// <summary>What a cost is made of. The first three are money and sum to the plan's total cost; the last two only steer the plan.</summary>
/// <param name="Materials">Price of what is weighed in.</param>
/// <param name="Slag">Cost of the slag that its dirt makes.</param>
/// <param name="Energy">Cost of melting it.</param>
/// <param name="UseUpBonus">What using up was taken to be worth.</param>
/// <param name="Nearness">What the distances from the aims were taken to cost.</param>
public sealed record CostParts(double Materials, double Slag, double Energy, double UseUpBonus, double Nearness)
{
    /// <summary>The money.</summary>
    public double Total => Materials + Slag + Energy;

    /// <summary>What is minimised: a dearer plan may be the better one by it.</summary>
    public double Weighed => Total - UseUpBonus + Nearness;
}
