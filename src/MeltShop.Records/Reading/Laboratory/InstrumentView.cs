using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Laboratory;

namespace MeltShop.Records.Reading.Laboratory;

/// <inheritdoc cref="Instrument"/>
/// <param name="Elements">In report order.</param>
public sealed record InstrumentView(
    long Id, Guid Version, string Code, string Name, InstrumentKind Kind, bool SendsMeanOnly, string? FiguresSource, bool IsActive,
    IReadOnlyList<InstrumentElementView> Elements)
{
    /// <summary>What is said of an element; null where it does not measure it.</summary>
    public InstrumentElementView? Of(Element element) => Elements.FirstOrDefault(e => e.Element == element);

    /// <summary>Standard deviations of one result, percentage points, of the elements of which it is known.</summary>
    public IReadOnlyDictionary<Element, double> Repeatabilities() =>
        Elements.Where(e => e.Repeatability is not null).ToDictionary(e => e.Element, e => e.Repeatability!.Value);
}

/// <inheritdoc cref="InstrumentElement"/>
public sealed record InstrumentElementView(Element Element, double? Repeatability, double? GuardFactor);
