using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Castings;
using MeltShop.Operations.Grades;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Castings;
using MeltShop.Records.Grades;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Castings;

/// <summary>
/// Castings of EN-GJS-500-7 that are sold as EN-GJS-400-15. Minima for walls to 30 mm: 500, 320 MPa and 7 %; 400, 250 MPa and 15 %
/// (EN 1563:2018, Table 1, as the program has them).
/// </summary>
public sealed class DowngradeTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Downgrade_WithTestsMarkingAndConsent_ReleasesAsTheOtherGrade(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (ladle, gradeId) = await Held(shop);
        await Tested(shop, ladle, tensile: 430, proof: 280, elongation: 18);

        Assert.True((await Shop.Do(shop.Get<DowngradeCastings>(), shop.Inspector, Downgrade(shop, ladle, gradeId))).Succeeded);

        Assert.Equal(TreatedLadleState.Released, (await shop.Treated(ladle.Id)).State);
        await using var db = shop.Db();
        var decision = await db.InForce<CastingDecision>().OrderBy(d => d.Id).LastAsync(Soon);
        Assert.Equal((CastingVerdict.Downgrade, gradeId, true), (decision.Verdict, decision.GradeId!.Value, decision.WasSigned));
        Assert.Equal(("400-15 stamped beside the barred mark", "buyer, by letter of 2 March"), (decision.ReMarking, decision.Consent));
        Assert.All(SeenCastings.Of(decision.Seen)!.Tests, t => Assert.Equal(PropertyStanding.Meets, t.Standing));
        var board = await shop.Get<CastingsBoard>().Load(ladle.Id, Soon);
        Assert.Equal("EN-GJS-400-15", board.GradeCode);
        Assert.All(board.Pieces[0].Verdicts, v => Assert.Equal(PropertyStanding.Meets, v.Standing));
    }

    [Fact]
    public async Task Downgrade_WithoutAllThatItNeeds_IsRefused()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var (ladle, gradeId) = await Held(shop);
        var command = Downgrade(shop, ladle, gradeId);
        Task Refused(Acting who, DowngradeCastings.Command with, string path, string code) =>
            shop.Refuses(shop.Get<DowngradeCastings>(), who, with with { EntryKey = Guid.NewGuid() }, path, code);

        await Refused(shop.Inspector, command, "gradeId", "downgrade.noTest");
        await Tested(shop, ladle, tensile: 430, proof: 280, elongation: null);
        await Refused(shop.Inspector, command, "gradeId", "test.missing");
        await Tested(shop, ladle, tensile: null, proof: null, elongation: 14);
        await Refused(shop.Inspector, command, "gradeId", "test.fails");
        await Refused(shop.Inspector, command with { ReMarking = " " }, "reMarking", "text.missing");
        await Refused(shop.Inspector, command with { Consent = "" }, "consent", "text.missing");
        await Refused(shop.Inspector, command with { GradeId = shop.DuctileId }, "gradeId", "downgrade.sameGrade");
        await Refused(shop.Metallurgist, command, "", "right.missing");
        await shop.Refuses(
            shop.Get<DecideCastings>(), shop.Inspector, new(Guid.NewGuid(), shop.Now, ladle.Id, ladle.Version, CastingVerdict.Downgrade, null, "x"), "verdict", "downgrade.apart");
    }

    [Fact]
    public async Task Downgrade_WithoutThePassword_OrOfReleasedCastings_IsRefused()
    {
        await using var shop = await Shop.Open(RecordsProvider.Sqlite);
        var (ladle, gradeId) = await Held(shop);
        await Tested(shop, ladle, tensile: 430, proof: 280, elongation: 18);
        var command = Downgrade(shop, ladle, gradeId);

        await shop.Refuses(shop.Get<DowngradeCastings>(), shop.Inspector, command with { Password = "not the password" }, "password", "password.wrong");
        await Shop.Do(shop.Get<DowngradeCastings>(), shop.Inspector, command);
        await shop.Refuses(
            shop.Get<DowngradeCastings>(), shop.Inspector, command with { EntryKey = Guid.NewGuid(), Version = (await shop.Treated(ladle.Id)).Version }, "treatedLadleId", "state.wrong");
    }

    private static DowngradeCastings.Command Downgrade(Shop shop, TreatedLadle ladle, long gradeId) => new(
        Guid.NewGuid(), shop.Now, ladle.Id, ladle.Version, gradeId, "400-15 stamped beside the barred mark", "buyer, by letter of 2 March", "strength too low for 500-7")
    { Password = Shop.Password };

    private static async Task<(TreatedLadle Ladle, long GradeId)> Held(Shop shop)
    {
        var gradeId = (await Shop.Do(shop.Get<AddGrade>(), shop.Metallurgist, new(
            Guid.NewGuid(), shop.Now, "EN-GJS-400-15", Records.Grades.IronFamily.Ductile, "invented for a test",
            [new GradeWindowInput(WindowStage.Poured, "Mg", 0.030, 0.04, 0.060)], new(0.04, 0.03, 0.006, "mgfesi", "inoculant", 0.4, 8)))).Value;
        var heat = await shop.Bath();
        var ladle = await shop.Poured(heat);
        await shop.Sample(heat, ladle, SampleKind.LastMetal, ("C", 3.3), ("Si", 2.4), ("Mg", 0.041));
        await shop.Decide(shop.Inspector, await shop.Treated(ladle.Id), CastingVerdict.Hold, null, "strength to be tested");
        return (await shop.Treated(ladle.Id), gradeId);
    }

    private static async Task Tested(Shop shop, TreatedLadle ladle, double? tensile, double? proof, double? elongation)
    {
        await using var db = shop.Db();
        var piece = await db.TestPieces.Where(p => p.TreatedLadleId == ladle.Id).Select(p => (long?)p.Id).SingleOrDefaultAsync(Soon)
            ?? (await Shop.Do(shop.Get<RecordTestPiece>(), shop.Inspector,
                new(Guid.NewGuid(), shop.Now, ladle.Id, "K 1", TestPieceShape.KeelBlock, SampleType.CastSample, 25, "moulds 1 to 12"))).Value;
        var values = new Dictionary<CastProperty, double?>
        {
            [CastProperty.TensileMPa] = tensile, [CastProperty.ProofMPa] = proof, [CastProperty.ElongationPercent] = elongation,
        };
        await Shop.Do(shop.Get<RecordTestResults>(), shop.Inspector, new(
            Guid.NewGuid(), shop.Now, piece, values.Where(v => v.Value is not null).ToDictionary(v => v.Key, v => v.Value!.Value)));
    }
}
