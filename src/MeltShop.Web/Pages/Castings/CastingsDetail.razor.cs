using MeltShop.Operations.Castings;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Reading.Sites;
using MeltShop.Records.Writing;
using MeltShop.Web.Pages.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Castings;

/// <summary>What is known of the castings of a ladle after the pour: test pieces against the grade, and certificates.</summary>
public sealed partial class CastingsDetail
{
    [Parameter]
    public long Id { get; set; }

    [Inject]
    private LadlePage Page { get; set; } = null!;

    [Inject]
    private SitePage SitePage { get; set; } = null!;

    [Inject]
    private LadleForecast Forecast { get; set; } = null!;

    [Inject]
    private CastingsBoard Board { get; set; } = null!;

    [Inject]
    private RecordTestPiece Pieces { get; set; } = null!;

    [Inject]
    private RecordTestResults Results { get; set; } = null!;

    [Inject]
    private DowngradeCastings Downgrade { get; set; } = null!;

    [Inject]
    private IssueCertificate Issue { get; set; } = null!;

    private TreatedLadleView Treated => View!.Ladle.Treated!;

    private IReadOnlyList<string> Moulds => [.. View!.Ladle.Pouring!.Poured.Select(m => m.Label)];

    protected override Task<CastingsContent?> Read(CancellationToken ct) => new CastingsReading(Page, SitePage, Forecast, Board).Load(Id, ct);

    protected override bool Concerns(ChangeNotice change) => LadleChanges.Concern(View?.Ladle, change);
}
