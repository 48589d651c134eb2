namespace MeltShop.Web.Tests.Texts;

public sealed class VisibleTextTests
{
    [Theory]
    [InlineData("<p>Hello</p>", "Hello")]
    [InlineData("<p>@Text[\"Key\"]</p>", null)]
    [InlineData("<p>@Text[\"Key\", Shown(3)] left</p>", "left")]
    [InlineData("<button @onclick=\"() => Take(choice)\">@NumberText.Show(choice) @Unit</button>", null)]
    [InlineData("<input aria-label=\"Mass\" />", "Mass")]
    [InlineData("<input aria-label=\"@Text[\"Mass\"]\" />", null)]
    [InlineData("@if (Value is { } value)\n{\n    <p>@value</p>\n}\nelse\n{\n    <p>Nothing</p>\n}", "Nothing")]
    [InlineData("@* a remark *@\n@inject IStringLocalizer<Texts.Yard> Text\n<p class=\"wide\">–</p>", null)]
    public void RazorWords_Markup_FindsWordsOutsideResources(string markup, string? word) =>
        Assert.Equal(word is null ? [] : [word], RazorWords.In(markup));

    [Fact]
    public void RazorFiles_All_TakeTheirWordsFromResources()
    {
        var files = Sources.Files("MeltShop.Web", "*.razor").ToList();
        Assert.True(files.Count > 10);

        var words = files.SelectMany(file => RazorWords.In(File.ReadAllText(file)).Select(word => $"{Sources.Name(file)}: {word}"));
        Assert.Empty(words);
    }
}
