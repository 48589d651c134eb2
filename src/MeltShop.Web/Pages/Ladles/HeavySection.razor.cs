using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>Chunky graphite in the middle of a heavy section: what antimony the one good point that was published says for these rare earths.</summary>
public sealed partial class HeavySection
{
    [Parameter, EditorRequired]
    public PocketAnswer Answer { get; set; } = null!;

    [Parameter, EditorRequired]
    public PocketFacts Facts { get; set; } = null!;

    /// <summary>The heaviest section, mm; null where nobody said.</summary>
    [Parameter, EditorRequired]
    public double? SectionMm { get; set; }

    /// <summary>After the treatment, %; null where neither bath nor alloy says anything of them.</summary>
    private double? RareEarths => ChunkyGraphite.RareEarthPercent(Answer.Iron!.AtStart.Analysis);

    private bool IsBathKnown => ChunkyGraphite.RareEarthPercent(Facts.Bath) is not null;

    private double Antimony => ChunkyGraphite.AntimonyPercent(RareEarths ?? 0);
}
