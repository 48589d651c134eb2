using System.Security.Cryptography;
using Bunit;
using MeltShop.Operations.Castings;
using MeltShop.Records;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Web.Pages.Castings;
using MeltShop.Web.Tests.Texts;
using MeltShop.Web.Texts;
using Microsoft.EntityFrameworkCore;
using UglyToad.PdfPig;

namespace MeltShop.Web.Tests.Pages.Castings;

public sealed class CastingsDetailTests : DemoShopTest
{
    [Fact]
    public async Task Castings_ReleasedAndTested_GetACertificateWhoseBytesAreKept()
    {
        var page = await Open(TreatedLadleState.Released, Role.Inspector);
        Assert.NotNull(page.Find("[data-testid=no-pieces]"));
        await Add(page);
        await Fill(page, ("values.TensileMPa", "512"), ("values.ProofMPa", "331"), ("values.NodularityPercent", "92"), ("values.GraphiteForm", "6"));

        page.WaitForAssertion(() => Assert.Equal("Meets", page.Find("[data-property=TensileMPa]").GetAttribute("data-standing")));
        Assert.Equal("NotTested", page.Find("[data-property=ElongationPercent]").GetAttribute("data-standing"));
        Assert.Equal("VI", page.Find("[data-property=GraphiteForm] td").TextContent);

        await Issue(page, "Otto Demo Pumps", "4711", "12 pump housings");
        page.WaitForElement("[data-testid=certificate]");
        var (id, sha, bytes) = await Certificate();
        Assert.Equal(sha, Convert.ToHexStringLower(SHA256.HashData(bytes)));
        Assert.Equal($"/certificates/{id}", page.Find("[data-testid=certificate] a").GetAttribute("href"));
        using var document = PdfDocument.Open(bytes);
        var words = string.Join(' ', document.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
        Assert.All(
            [DemoHeatNumber, "EN-GJS-500-7", "EN 1563", "Otto Demo Pumps", "4711", "12 pump housings", "EN 10204", "Released by", "moulds 1 to 12", "not tested", "512", "page 1 of"],
            part => Assert.Contains(part, words, StringComparison.Ordinal));
        Assert.DoesNotMatch("[0-9][.][0-9]{6}", words); // rounded for the eye
        Assert.All(document.GetPages().SelectMany(p => p.Letters), letter => Assert.Matches("^[A-Z]{6}\\+DejaVu", letter.FontName!)); // a subset of the shipped face, embedded
    }

    [Fact]
    public async Task Castings_NotReleased_GetNoCertificate()
    {
        var page = await Open(TreatedLadleState.Held, Role.Inspector);

        Assert.NotNull(page.Find("[data-testid=not-released]"));
        Assert.Empty(page.FindAll("[data-testid=certificate-form]"));
    }

    [Fact]
    public async Task Castings_ThatFailATest_AreHeldAgain()
    {
        var page = await Open(TreatedLadleState.Released, Role.Inspector);
        await Add(page);
        await Fill(page, ("values.ElongationPercent", "3"));

        page.WaitForAssertion(() => Assert.Equal("Held", page.Find("[data-testid=castings-state]").TextContent));
        Assert.Equal("Fails", page.Find("[data-property=ElongationPercent]").GetAttribute("data-standing"));
    }

    [Fact]
    public async Task Result_ThatCannotBe_IsToldAtItsFieldAndNothingIsLost()
    {
        var page = await Open(TreatedLadleState.Released, Role.Inspector);
        await Add(page);
        await Fill(page, ("values.ElongationPercent", "700"), ("values.TensileMPa", "512"));

        page.WaitForElement("[data-testid=result-form] [data-field='values.ElongationPercent'] .field-error");
        Assert.Equal("512", page.Find("[data-testid=result-form] [data-field='values.TensileMPa'] input").GetAttribute("value"));
    }

    [Fact]
    public async Task Castings_ForAMelter_OfferNeitherResultsNorACertificate()
    {
        var page = await Open(TreatedLadleState.Released, Role.Melter);

        Assert.Empty(page.FindAll("[data-testid=result-form], [data-testid=certificate-form]"));
        Assert.NotNull(page.Find("[data-testid=piece-form]"));
    }

    [Fact]
    public async Task Castings_InThePseudoLanguage_HaveNoWordOutsideTheirTexts()
    {
        Speak(PseudoLanguage.Culture);
        var page = await Open(TreatedLadleState.Released, Role.Inspector);

        Assert.Empty(Marks.WordsOutside(page.Nodes, DemoHeatNumber, "EN-GJS-500-7", "mm"));
    }

    private async Task<IRenderedComponent<CastingsDetail>> Open(TreatedLadleState state, string role)
    {
        SignIn(role);
        await using var db = await The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(Cancellation);
        var id = await db.TreatedLadles.Where(l => l.State == state).OrderBy(l => l.Id).Select(l => l.Id).FirstAsync(Cancellation);
        var page = Render<CastingsDetail>(p => p.Add(d => d.Id, id));
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0);
        return page;
    }

    private static async Task Add(IRenderedComponent<CastingsDetail> page)
    {
        Type(page, "piece-form", ("label", "K 1"), ("wallMm", "25"), ("testUnit", "moulds 1 to 12"));
        await page.Find("[data-testid=piece-form]").SubmitAsync();
        page.WaitForElement("[data-testid=test-piece]");
    }

    private static async Task Fill(IRenderedComponent<CastingsDetail> page, params (string Field, string Text)[] values)
    {
        page.WaitForElement("[data-testid=result-form]");
        Type(page, "result-form", values);
        await page.Find("[data-testid=result-form]").SubmitAsync();
    }

    private static async Task Issue(IRenderedComponent<CastingsDetail> page, string buyer, string order, string castings)
    {
        Type(page, "certificate-form", ("buyer", buyer), ("order", order), ("castings", castings));
        await page.Find("[data-testid=certificate-form]").SubmitAsync();
    }

    private static void Type(IRenderedComponent<CastingsDetail> page, string form, params (string Field, string Text)[] values)
    {
        foreach (var (field, text) in values) page.Find($"[data-testid={form}] [data-field='{field}'] input").Change(text);
    }

    private async Task<(long Id, string Sha, byte[] Bytes)> Certificate()
    {
        await using var db = await The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(Cancellation);
        var certificate = await db.Certificates.SingleAsync(Cancellation);
        return (certificate.Id, certificate.Sha256, (await The<CastingsBoard>().Document(certificate.Id, Cancellation))!.Document);
    }
}
