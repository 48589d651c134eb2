using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Castings;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Castings;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Reading.Sites;
using MeltShop.Web.Components.Reading;
using MeltShop.Web.Pages.Castings;
using MeltShop.Web.Printing;
using Microsoft.Extensions.Localization;

namespace MeltShop.Web.Demo;

/// <summary>The castings of one ladle after the pour: a test piece with what it was tested for, and the certificate. All figures are invented.</summary>
internal sealed class DemoCastings(DemoHeat heat, DemoHands hands)
{
    /// <summary>When the castings are decided about: after the test, in minutes from the plan.</summary>
    public const double DecidedMinute = 600;

    private const double CastMinute = 147, TestedMinute = 540, CertifiedMinute = 620;

    private static readonly Dictionary<CastProperty, double> Pulled = new()
    {
        [CastProperty.TensileMPa] = 538, [CastProperty.ProofMPa] = 346, [CastProperty.ElongationPercent] = 9.5, [CastProperty.HardnessHbw] = 194,
    };

    private static readonly Dictionary<CastProperty, double> Seen = new()
    {
        [CastProperty.NodularityPercent] = 90, [CastProperty.NodulesPerMm2] = 210, [CastProperty.GraphiteForm] = 6, [CastProperty.GraphiteSize] = 6,
        [CastProperty.FerritePercent] = 55, [CastProperty.PearlitePercent] = 45, [CastProperty.CarbidePercent] = 0,
    };

    public async Task Test(long treatedLadleId, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        var piece = await hands.Do(hands.The<RecordTestPiece>(), Role.Melter, new(
            DemoKey.Of("castings/piece"), heat.At(CastMinute), treatedLadleId, "P1", TestPieceShape.YBlock, SampleType.CastSample, 25, "Housings 3-1 to 3-5")
        {
            Moulds = ["3-1", "3-2", "3-3", "3-4", "3-5"],
        });
        await hands.Do(hands.The<RecordTestResults>(), Role.Inspector, new(
            DemoKey.Of("castings/pulled"), heat.At(TestedMinute), piece, Pulled, "EN ISO 6892-1; EN ISO 6506-1"));
        await hands.Do(hands.The<RecordTestResults>(), Role.Inspector, new(
            DemoKey.Of("castings/seen"), heat.At(TestedMinute), piece, Seen, "EN ISO 945-1, x100"));
    }

    public async Task Certify(long treatedLadleId, CancellationToken cancellation)
    {
        var key = DemoKey.Of("castings/certificate");
        var reading = new CastingsReading(hands.The<LadlePage>(), hands.The<SitePage>(), hands.The<LadleForecast>(), hands.The<CastingsBoard>());
        var (content, shop) = ((await reading.Load(treatedLadleId, cancellation))!, new ShopSite(hands.The<SitePage>()));
        await shop.Load(cancellation);
        var (number, at) = ($"{content.Ladle.Heat.Number}/{content.Ladle.Treated!.Ordinal}", heat.At(CertifiedMinute));
        var document = new CertificateSheet(hands.The<IStringLocalizer<Texts.Castings>>(), hands.The<IStringLocalizer<Texts.Limits>>(), shop).Draw(
            content, new("A customer of the demo", "Demo order 1", "5 housings"), number, 1, at, hands.Name(Role.Inspector));
        await hands.Do(hands.The<IssueCertificate>(), Role.Inspector, new(
            key, at, treatedLadleId, content.Ladle.Treated.Version, number, 1, content.Board.TrailHead, document, null));
    }
}
