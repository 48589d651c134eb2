using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Laboratory;

namespace MeltShop.Records.Reading.Laboratory;

/// <inheritdoc cref="ReferenceMaterial"/>
/// <param name="Values">In report order.</param>
public sealed record ReferenceView(long Id, string Code, string Name, string Certificate, bool IsActive, IReadOnlyList<CertifiedView> Values);

/// <inheritdoc cref="CertifiedValue"/>
public sealed record CertifiedView(Element Element, double Percent, double? PlusMinus);

/// <summary>A check of an instrument, with the mean of each element over its burns.</summary>
public sealed record ControlSampleView(Origin Origin, long ReferenceMaterialId, string? Remarks, IReadOnlyList<MeanView> Means)
{
    public long Id => Origin.FactId;
}
