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

        Assert.NotNull(page.Find("[data-testid=certificates] [data-formula=magnesium-floor]"));
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
        Assert.DoesNotMatch("[A-Z][a-z]? 0[.]0+[,.]", words); // a trace is no nought
        Assert.All(document.GetPages().SelectMany(p => p.Letters), letter => Assert.Matches("^[A-Z]{6}\\+DejaVu", letter.FontName!)); // a subset of the shipped face, embedded
    }

    [Fact]
    public async Task Certificate_PressedForOnTheDrawingBeforeAResultCame_IsNotIssued()
    {
        var page = await Open(TreatedLadleState.Released, Role.Inspector);
        await Add(page);
        Type(page, "certificate-form", ("buyer", "Otto Demo Pumps"), ("order", "4711"), ("castings", "12 pump housings"));
        var former = page.FindAll("[data-testid=certificate-form]").Single();
        await Fill(page, ("values.TensileMPa", "512"));
        page.WaitForAssertion(() => Assert.Equal("Meets", page.Find("[data-property=TensileMPa]").GetAttribute("data-standing")));

        await Assert.ThrowsAsync<Bunit.Rendering.UnknownEventHandlerIdException>(() => former.SubmitAsync()); // a browser has it said, and is told that something came
        await using var db = await The<IDbContextFactory<RecordsContext>>().CreateDbContextAsync(Cancellation);
        Assert.False(await db.Certificates.AnyAsync(certificate => certificate.Number.StartsWith(DemoHeatNumber + "/1"), Cancellation));
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
    public async Task Castings_HeldAndTested_AreDowngradedWithMarkingConsentAndPassword()
    {
        var page = await Open(TreatedLadleState.Held, Role.Inspector);
        await Add(page, "45"); // over 30 mm the limits are remembered
        await Fill(page, ("values.TensileMPa", "430"), ("values.ProofMPa", "280"), ("values.ElongationPercent", "18"));
        page.WaitForAssertion(() => Assert.Equal("Fails", page.Find("[data-property=TensileMPa]").GetAttribute("data-standing")));

        page.Find("[data-testid=downgrade-open]").Click();
        HasKeyboard(page);
        page.Find("[data-testid=downgrade-form] [data-field=gradeId] select").Change(
            page.FindAll("[data-testid=downgrade-form] [data-field=gradeId] option").Single(o => o.TextContent == "EN-GJS-400-15").GetAttribute("value"));
        Type(page, "downgrade-form", ("reMarking", "400-15 beside the barred mark"), ("consent", "buyer, letter of 2 March"), ("reason", "too soft for 500-7"), ("password", "not this one"));
        await page.Find("[data-testid=downgrade-form]").SubmitAsync();
        page.WaitForElement("[data-testid=downgrade-form] [data-field=password] .field-error");
        Assert.Equal("400-15 beside the barred mark", page.Find("[data-testid=downgrade-form] [data-field=reMarking] input").GetAttribute("value"));

        Type(page, "downgrade-form", ("password", Password));
        await page.Find("[data-testid=downgrade-form]").SubmitAsync();
        page.WaitForAssertion(() => Assert.Equal("Released", page.Find("[data-testid=castings-state]").TextContent));
        Assert.Contains("EN-GJS-400-15", page.Find("[data-verdict=Downgrade]").TextContent, StringComparison.Ordinal);
        Assert.Equal("Meets", page.Find("[data-property=TensileMPa]").GetAttribute("data-standing"));

        await Issue(page, "Otto Demo Pumps", "4711", "12 pump housings");
        page.WaitForElement("[data-testid=certificate]");
        using var document = PdfDocument.Open((await Certificate()).Bytes);
        var words = string.Join(' ', document.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
        Assert.All(["Ordered as EN-GJS-500-7", "downgraded to EN-GJS-400-15", "letter of 2 March", "limit from memory"], part => Assert.Contains(part, words, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Verdict_ByALimitFromMemory_IsMarkedSo()
    {
        var page = await Open(TreatedLadleState.Held, Role.Inspector);
        await Add(page, "45"); // over 30 mm the limits are remembered, to 30 mm they were read
        Assert.NotNull(page.Find("[data-property=TensileMPa] [data-testid=remembered]"));

        page.Find("[data-testid=correct-piece]").Click();
        HasKeyboard(page);
        Type(page, "piece-correction", ("wallMm", "25"), ("reason", "read from the drawing"));
        await page.Find("[data-testid=piece-correction]").SubmitAsync();
        page.WaitForAssertion(() => Assert.Empty(page.FindAll("[data-property=TensileMPa] [data-testid=remembered]")));
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

    private static async Task Add(IRenderedComponent<CastingsDetail> page, string wall = "25")
    {
        Type(page, "piece-form", ("label", "K 1"), ("wallMm", wall), ("testUnit", "moulds 1 to 12"));
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
        var certificate = await db.Certificates.OrderBy(c => c.Id).LastAsync(Cancellation); // the demo has one of its own
        return (certificate.Id, certificate.Sha256, (await The<CastingsBoard>().Document(certificate.Id, Cancellation))!.Document);
    }
}
