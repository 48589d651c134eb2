using MeltShop.Charging.Plans;
using MeltShop.Metallurgy.Elements;

namespace MeltShop.Charging.WhatIf;

/// <summary>What would make an impossible charge possible.</summary>
/// <param name="Possible">Materials of which enough would do, each by itself, the cheapest charge first; empty where none does, or nothing has to be bought.</param>
/// <param name="Ideal">The least of a material that is made for it; null where not even that helps, or nothing has to be bought.</param>
public sealed record WhatToBuy(IReadOnlyList<Purchase> Possible, IdealPurchase? Ideal)
{
    /// <summary>A search came to no end: something may be missing here, and less of what is here may do.</summary>
    public bool IsUncertain { get; init; }
}

/// <summary>The least of a material that makes the charge possible.</summary>
/// <param name="Code">The material.</param>
/// <param name="Kg">What is missing of it beyond its stock, kg: with less there is no charge.</param>
/// <param name="Charge">The cheapest charge with just that much.</param>
public sealed record Purchase(string Code, double Kg, ChargeEvaluation Charge);

/// <summary>The least of any metal that makes the charge possible: nobody sells just this, but what is bought has to come near to it, or be more.</summary>
/// <param name="Kg">Its mass, kg, all of which melts in.</param>
/// <param name="Analysis">Its analysis; an element that the limits name and that is not here must not be in it.</param>
public sealed partial record IdealPurchase(double Kg, Analysis Analysis);
