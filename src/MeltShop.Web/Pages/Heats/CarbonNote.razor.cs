using MeltShop.Operations.Laboratory;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Laboratory;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>Why the carbon of a coin is not judged, and where it comes from instead, the surest first.</summary>
public sealed partial class CarbonNote
{
    [Parameter, EditorRequired]
    public SampleView Sample { get; set; } = null!;

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    private IReadOnlyList<CarbonElsewhere> Sources => CarbonElsewhere.Of(Sample, Heat.Samples);
}
