using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;

namespace MeltShop.Operations.Laboratory;

/// <summary>An element that an instrument measures.</summary>
/// <param name="Element">Symbol.</param>
/// <param name="Repeatability">Standard deviation of one result as it is sent, percentage points, over 0; null where nobody found it.</param>
/// <param name="GuardFactor">Guard band as a multiple of it, 0 to 10; null for none.</param>
public sealed record InstrumentElementInput(string Element, double? Repeatability = null, double? GuardFactor = null);

internal static class InstrumentElementInputs
{
    /// <summary>A wider band leaves no window (common practice, no source).</summary>
    private const double LargestFactor = 10;

    public static void Check(IReadOnlyList<InstrumentElementInput> elements, string? source, FieldCheck fields)
    {
        fields.OptionalText("figuresSource", source, 500);
        if (elements.Any(e => e.Repeatability is not null) && string.IsNullOrWhiteSpace(source)) fields.Add("figuresSource", "text.missing");
        foreach (var (given, index) in elements.Select((given, index) => (given, index)))
        {
            var path = $"elements.{given.Element}";
            if (!Element.TryParse(given.Element, out var element) || element == Element.Fe) fields.Add(path, "element.unknown", given.Element);
            else if (elements.Take(index).Any(e => e.Element == given.Element)) fields.Add(path, "element.twice", given.Element);
            if (given.Repeatability is { } repeatability) fields.Positive($"{path}.repeatability", repeatability);
            if (given.GuardFactor is not { } factor) continue;
            fields.NotNegative($"{path}.guardFactor", factor);
            if (factor > LargestFactor) fields.Add($"{path}.guardFactor", "number.tooLarge", LargestFactor);
            if (given.Repeatability is null) fields.Add($"{path}.repeatability", "instrument.guardOfNothing");
        }
    }
}
