using System.Globalization;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Heats;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Writing;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Heats;

/// <summary>One heat on one page: what to do next comes first, and everything that happened stands below with who and when.</summary>
public sealed partial class HeatDetail
{
    [Parameter]
    public long HeatId { get; set; }

    /// <summary>Shows the heat as it was known at this instant; null, or no instant, for now.</summary>
    [SupplyParameterFromQuery]
    public string? Known { get; set; }

    [Inject]
    private HeatPage Page { get; set; } = null!;

    [Inject]
    private YardPage Yard { get; set; } = null!;

    [Inject]
    private WeighIn Weigh { get; set; } = null!;

    [Inject]
    private RecordTemperature Temperature { get; set; } = null!;

    [Inject]
    private RecordSample Sample { get; set; } = null!;

    [Inject]
    private SetBurnAside Aside { get; set; } = null!;

    [Inject]
    private DipFurnace Dip { get; set; } = null!;

    [Inject]
    private CloseHeat Close { get; set; } = null!;

    [Inject]
    private CorrectHeat OfItself { get; set; } = null!;

    [Inject]
    private CancelHeat Cancel { get; set; } = null!;

    private DateTimeOffset? KnownAt =>
        DateTimeOffset.TryParse(Known, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out var known) ? known : null;

    /// <summary>Nothing is entered into the past.</summary>
    private bool IsNow => View?.Heat.KnownAt is null;

    private bool IsInFurnace => IsNow && (View?.Heat.Heat.State is HeatState.Charging or HeatState.Bath or HeatState.Tapping);

    protected override async Task<HeatScreen?> Read(CancellationToken ct) =>
        await Page.LoadAsKnown(HeatId, KnownAt, ct) is { } heat
            ? new HeatScreen(heat, await Yard.All(ct))
            : null;

    protected override bool Concerns(ChangeNotice change) => HeatChanges.Concern(View?.Heat, HeatId, change);

    /// <summary>The parts of the page, the next thing to do first.</summary>
    private static IReadOnlyList<HeatSection> Sections(HeatState state) => state switch
    {
        HeatState.Charging => [HeatSection.Weighing, HeatSection.Temperatures, HeatSection.Samples, HeatSection.Ladles, HeatSection.Metal, HeatSection.End],
        HeatState.Bath => [HeatSection.Samples, HeatSection.Temperatures, HeatSection.Ladles, HeatSection.Weighing, HeatSection.Metal, HeatSection.End],
        _ => [HeatSection.Ladles, HeatSection.Temperatures, HeatSection.Samples, HeatSection.Weighing, HeatSection.Metal, HeatSection.End],
    };
}
