namespace MeltShop.Web.Components.Limits;

/// <summary>Where a value stands to its window.</summary>
public enum LimitVerdict
{
    /// <summary>There is no value: not measured is not zero.</summary>
    Unknown,
    In,
    Low,
    High,

    /// <summary>Nearer to a limit than the value is certain.</summary>
    Close,

    /// <summary>There is a value that is not to be believed, or its formula says nothing of such an iron.</summary>
    Unjudged,
}

/// <summary>Judges a value.</summary>
public static class LimitVerdicts
{
    /// <summary>What counts as on the limit, percentage points: room for the arithmetic of doubles, far below any instrument.</summary>
    public const double Tolerance = 1e-6;

    /// <summary>Judges the unrounded value against its limits.</summary>
    /// <param name="value">The value, in the unit of the limits; null where it was not measured.</param>
    /// <param name="least">Lower limit, or null.</param>
    /// <param name="most">Upper limit, or null.</param>
    /// <param name="doubt">How far the true value may lie from this one, same unit; 0 where it is taken as it is.</param>
    public static LimitVerdict Of(double? value, double? least, double? most, double doubt = 0) => value switch
    {
        null => LimitVerdict.Unknown,
        { } number when doubt > 0 && (IsNear(number, least, doubt) || IsNear(number, most, doubt)) => LimitVerdict.Close,
        { } number when number < least - Tolerance => LimitVerdict.Low,
        { } number when number > most + Tolerance => LimitVerdict.High,
        _ => LimitVerdict.In,
    };

    private static bool IsNear(double value, double? limit, double doubt) => limit is { } number && Math.Abs(value - number) < doubt;
}
