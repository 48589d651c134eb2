using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Pages.Ladles;

namespace MeltShop.Web.Tests.Pages.Ladles;

/// <summary>What stands on a pocket card before anybody typed, and what becomes of it.</summary>
public sealed class PocketDraftTests : LadleTest
{
    [Fact]
    public async Task Cover_ThatWasTakenOut_StaysOutWhenThePageIsReadAgain()
    {
        var view = await WithLadles("sandwich");
        var draft = new PocketDraft();
        draft.Fill(view);
        Assert.Equal(1, draft.CoverRate.Value);

        draft.Cover.Text = "";
        draft.Fill(view);
        draft.OfferCover(view);
        Assert.Null(draft.CoverId);
    }

    /// <summary>Common practice, no source: cover steel lies on an alloy in a pocket, and there is none for wire, a bell, a converter, a mould or a chamber.</summary>
    [Fact]
    public async Task Cover_OfTheRecipe_GoesWithLadlesThatHaveAPocket()
    {
        foreach (var (process, isCovered) in new[]
        {
            ("sandwich", true), ("tundishCover", true), ("coredWire", false), ("plunging", false), ("plungingBriquette", false), ("converter", false),
            ("inMould", false), ("flowThrough", false),
        })
        {
            var draft = new PocketDraft();
            draft.Fill(await WithLadles(process));
            Assert.Equal((process, isCovered, isCovered ? 1.0 : null), (process, draft.CoverId is not null, draft.CoverRate.Value));
        }
    }

    [Fact]
    public async Task Cover_WhenAnotherLadleIsChosen_ComesAndGoesUnlessAPersonChoseIt()
    {
        var view = await WithLadles("sandwich", "coredWire");
        var draft = new PocketDraft();
        draft.Fill(view);
        var cover = draft.Cover.Text;

        Choose(1);
        Assert.Equal((null, null), (draft.CoverId, draft.CoverRate.Value));
        Choose(0);
        Assert.Equal((cover, 1.0), (draft.Cover.Text, draft.CoverRate.Value));
        draft.CoverRate.Text = "1.5";
        Choose(1);
        Assert.Equal((cover, 1.5), (draft.Cover.Text, draft.CoverRate.Value));

        void Choose(int ladle)
        {
            draft.Ladle.Text = PocketDraft.Text(view.Ladles[ladle].Id);
            draft.OfferCover(view);
        }
    }

    private async Task<LadleView> WithLadles(params string[] processes)
    {
        await BathSample();
        var view = await Preparation();
        return view with { Ladles = [.. processes.Select((process, place) => view.Ladles[place] with { Process = process })] };
    }
}
