using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Castings;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Reading.Sites;

namespace MeltShop.Web.Pages.Castings;

/// <summary>Reads all that is known of a ladle's castings: for their page, and for the certificate.</summary>
internal sealed class CastingsReading(LadlePage page, SitePage sitePage, LadleForecast forecast, CastingsBoard boards)
{
    /// <summary>Null where there is no such ladle.</summary>
    public async Task<CastingsContent?> Load(long treatedLadleId, CancellationToken ct)
    {
        if (await page.Load(treatedLadleId, ct) is not { Treated: not null } ladle) return null;
        var last = ladle.Samples.Where(s => s.Kind == SampleKind.LastMetal && !s.Origin.IsCorrected && s.Means.Count > 0)
            .MaxBy(s => (s.Origin.ObservedAt, s.Id));
        var site = await sitePage.Load(ct);
        var board = await boards.Load(treatedLadleId, ct);
        return new(
            ladle, site?.Name ?? "", GradeProperties.For(board.GradeCode), last, last is null ? [] : await forecast.LastMetal(treatedLadleId, last.Id, ct), board);
    }
}
