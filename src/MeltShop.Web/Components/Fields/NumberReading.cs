using MeltShop.Metallurgy;

namespace MeltShop.Web.Components.Fields;

/// <summary>What a typed text says: nothing, a number, a question, or something that is refused.</summary>
/// <param name="Value">The number, or null.</param>
/// <param name="IsBelow">The number is a detection limit, and the amount is below it.</param>
/// <param name="Finding">Why there is no number; null for an empty text.</param>
/// <param name="Choices">Both readings where the text can be read in two ways.</param>
public sealed record NumberReading(double? Value, bool IsBelow, Finding? Finding, IReadOnlyList<double> Choices)
{
    public static NumberReading Nothing { get; } = new(null, false, null, []);

    public bool IsEmpty => Value is null && Finding is null;

    internal static NumberReading Refused(string code, params IReadOnlyList<object> arguments) =>
        new(null, false, new Finding("", code, arguments), []);

    internal static NumberReading Question(double decimalReading, double thousandsReading) =>
        new(null, false, new Finding("", "number.ambiguous"), [decimalReading, thousandsReading]);
}
