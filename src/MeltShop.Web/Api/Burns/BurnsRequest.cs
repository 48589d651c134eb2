using System.ComponentModel;

namespace MeltShop.Web.Api.Burns;

/// <summary>The question of the burns endpoint as the OpenAPI document shows it; read by <see cref="BurnsQuestion"/>.</summary>
internal sealed record BurnsRequest
{
    [Description("Replicate burns of one sample, mass percent by element symbol; an element absent is not counted for that burn.")]
    public required IReadOnlyList<IReadOnlyDictionary<string, double>> Burns { get; init; }

    [Description("Known standard deviation of the instrument by element symbol, %, more than 0.")]
    public IReadOnlyDictionary<string, double>? Repeatability { get; init; }
}
