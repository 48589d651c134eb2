using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Castings;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Reading.Sites;
using MeltShop.Records.Writing;
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

    protected override async Task<CastingsContent?> Read(CancellationToken ct)
    {
        if (await Page.Load(Id, ct) is not { Treated: not null } ladle) return null;
        var last = ladle.Samples.Where(s => s.Kind == SampleKind.LastMetal && !s.Origin.IsCorrected && s.Means.Count > 0)
            .MaxBy(s => (s.Origin.ObservedAt, s.Id));
        var site = await SitePage.Load(ct);
        var board = await Board.Load(Id, ct);
        return new(ladle, site?.Name ?? "", GradeProperties.For(board.GradeCode), last, last is null ? [] : await Forecast.LastMetal(Id, last.Id, ct), board);
    }

    protected override bool Concerns(ChangeNotice change) =>
        change.Kind == ChangeKind.TreatedLadle ? change.Id == Id : change.Kind is ChangeKind.Sample or ChangeKind.Grade;
}
