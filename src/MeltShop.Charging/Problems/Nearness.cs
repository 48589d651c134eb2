namespace MeltShop.Charging.Problems;

/// <summary>
/// The wish to end near a value. What is minimised grows by the price times the distance, on either side, so that a plan comes as
/// near as that pays; it is no money that anyone spends and is no part of the plan's cost.
/// </summary>
/// <param name="Aim">The value wished for, in the quantity's unit.</param>
/// <param name="PricePerPointTonne">Price of being one point off, per 1000 kg of liquid; 0 or more.</param>
public sealed record Nearness(double Aim, double PricePerPointTonne);
