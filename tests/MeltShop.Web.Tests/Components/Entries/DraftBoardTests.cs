using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Reading.Drafts;
using MeltShop.Web.Components.Entries;

namespace MeltShop.Web.Tests.Components.Entries;

public sealed class DraftBoardTests
{
    private const string Carbon = "burns[0].C", Silicon = "burns[0].Si";

    private readonly SampleEntry entry = new([Element.C, Element.Si]);
    private readonly DraftBoard board;

    public DraftBoardTests() => board = new(entry);

    [Fact]
    public void Draft_OfAnEmptyField_IsLaidIntoIt()
    {
        board.Lay([Draft(Carbon, "3.61"), Draft("burns[4].Si", "1.52")]);

        Assert.Equal(("3.61", "1.52"), (Text(Carbon), Text("burns[4].Si")));
        Assert.Empty(board.Clashes);
    }

    [Fact]
    public void Draft_WhereSomethingElseWasTyped_LeavesItAndClashes()
    {
        entry.Field(Carbon)!.Text = "3.16";
        board.Lay([Draft(Carbon, "3.61"), Draft(Silicon, "1.52")]);

        Assert.Equal(("3.16", "1.52"), (Text(Carbon), Text(Silicon)));
        Assert.Equal("3.61", Assert.Single(board.Clashes).Text);
    }

    [Fact]
    public void Draft_TypedAnew_ReplacesTheOneThatWasLaid()
    {
        board.Lay([Draft(Carbon, "3.61"), Draft(Silicon, "1.52")]);
        entry.Field(Silicon)!.Text = "1.25";
        board.Lay([Draft(Carbon, "3.62"), Draft(Silicon, "1.53")]);

        Assert.Equal(("3.62", "1.25"), (Text(Carbon), Text(Silicon)));
        Assert.Equal(Silicon, Assert.Single(board.Clashes).Field);
    }

    [Fact]
    public void Draft_TakenAway_EmptiesItsFieldAndNoOther()
    {
        board.Lay([Draft(Carbon, "3.61"), Draft(Silicon, "1.52")]);
        entry.Field(Silicon)!.Text = "1.25";
        board.Lay([]);

        Assert.Equal(("", "1.25"), (Text(Carbon), Text(Silicon)));
        Assert.Empty(board.Clashes);
        Assert.Empty(board.Lying);
    }

    [Fact]
    public void Versions_OfWhatLies_AreByField()
    {
        var draft = Draft(Carbon, "3.61");
        board.Lay([draft, Draft("of another program", "1")]);

        Assert.Equal(draft.Version, board.Versions[Carbon]);
    }

    private static DraftView Draft(string field, string text) => new(field, text, 2, "Somebody", DateTimeOffset.UnixEpoch, Guid.NewGuid());

    private string Text(string path) => entry.Field(path)!.Text;
}
