namespace MeltShop.Web.Api.Reading;

/// <summary>What a number has to be, and the code of the finding where it is not.</summary>
internal sealed record NumberRule(string Code, Func<double, bool> Holds)
{
    /// <summary>
    /// Greatest magnitude that any field may have. Far beyond every melt shop, and small enough that products of a few such
    /// numbers stay finite: an answer never overflows because a question did not.
    /// </summary>
    public const double GreatestMagnitude = 1e15;

    /// <summary>Any finite number: a price, a bound, a factor.</summary>
    public static NumberRule Any { get; } = new("number.any", _ => true);

    /// <summary>Kilograms, 0 or more.</summary>
    public static NumberRule Mass { get; } = new("mass.negative", kg => kg >= 0);

    /// <summary>Kilograms, from a gram (nothing can be said about no metal) to a million tonnes, beyond every melt shop.</summary>
    public static NumberRule SomeMass { get; } = new("mass.outside", kg => kg is >= 0.001 and <= 1e9);

    /// <summary>Mass percent or share, 0 to 100.</summary>
    public static NumberRule Percent { get; } = new("percent.outside", percent => percent is >= 0 and <= 100);

    /// <summary>A percent that is wanted, over 0 to 100.</summary>
    public static NumberRule WantedPercent { get; } = new("percent.notPositive", percent => percent is > 0 and <= 100);

    /// <summary>Recovery, 0 to 100 %.</summary>
    public static NumberRule Recovery { get; } = new("recovery.outside", percent => percent is >= 0 and <= 100);

    /// <summary>Metallic yield, over 0 to 100 %.</summary>
    public static NumberRule Yield { get; } = new("yield.outside", percent => percent is > 0 and <= 100);

    /// <summary>Standard deviation, 0 or more.</summary>
    public static NumberRule Spread { get; } = new("spread.negative", spread => spread >= 0);

    /// <summary>A known standard deviation of the instrument, more than 0.</summary>
    public static NumberRule Repeatability { get; } = new("repeatability.notPositive", deviation => deviation > 0);

    /// <summary>Distance from a bound, 0 or more.</summary>
    public static NumberRule Margin { get; } = new("margin.negative", margin => margin >= 0);

    /// <summary>One-sided confidence, 50 to below 100 %.</summary>
    public static NumberRule Confidence { get; } = new("confidence.outside", percent => percent is >= 50 and < 100);

    /// <summary>Minutes, 0 or more.</summary>
    public static NumberRule Minutes { get; } = new("minutes.negative", minutes => minutes >= 0);

    /// <summary>A rate of fading, 0 or more.</summary>
    public static NumberRule Fade { get; } = new("fade.negative", rate => rate >= 0);

    /// <summary>
    /// Temperature of liquid cast iron, °C. Wide: below 1000 °C none is liquid, and 2000 °C is beyond every furnace. A value
    /// outside is a mistyped one or one in °F.
    /// </summary>
    public static NumberRule LiquidIron { get; } = new("temperature.outside", celsius => celsius is >= 1000 and <= 2000);
}
