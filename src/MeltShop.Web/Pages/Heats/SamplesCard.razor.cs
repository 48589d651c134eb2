using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Laboratory;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>The coins of the bath, the last one first, and the entry of another; those of a ladle stand with the ladle.</summary>
public sealed partial class SamplesCard
{
    private bool isOpen;
    private bool isSaved;

    [Parameter, EditorRequired]
    public HeatView Heat { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    [Parameter, EditorRequired]
    public bool MaySetAside { get; set; }

    private IReadOnlyList<SampleView> Samples => [.. Heat.Samples.Where(sample => sample.TreatedLadleId is null && !sample.Origin.IsCorrected).Reverse()];

    private void Open() => (isOpen, isSaved) = (true, false);

    private void Close() => (isOpen, isSaved) = (false, true);

    private void Leave() => isOpen = false;
}
