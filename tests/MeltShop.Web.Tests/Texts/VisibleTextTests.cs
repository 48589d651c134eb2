using System.Text.RegularExpressions;

namespace MeltShop.Web.Tests.Texts;

public sealed partial class VisibleTextTests
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

    [Theory]
    [InlineData("""_ => "Not measured",""", true)]
    [InlineData("""<p>@(Kg is null ? "Nothing weighed yet" : MassText.Show(Kg))</p>""", true)]
    [InlineData("""<p class="@(IsOver ? "tag tag-watch" : "")">""", false)]
    [InlineData("""_ => Text["NotMeasured"],""", false)]
    [InlineData("""log.LogError(fault, "An entry could not be saved");""", false)]
    [InlineData("""throw new ArgumentException("Not a place of this page");""", false)]
    public void Sentence_InCode_IsFound(string line, bool isOne) => Assert.Equal(isOne, IsSentence(line));

    /// <summary>What is said to the log and to programmers nobody sees on a page.</summary>
    [Fact]
    public void CodeOfPages_All_TakesItsSentencesFromResources()
    {
        var files = new[] { "*.cs", "*.razor" }.SelectMany(kind => Sources.Files("MeltShop.Web", kind)).Select(file => (File: file, Name: Sources.Name(file).Replace('\\', '/')))
            .Where(file => new[] { "/Pages/", "/Components/", "/Printing/" }.Any(folder => file.Name.Contains(folder, StringComparison.Ordinal))).ToList();
        Assert.True(files.Count > 200, $"{files.Count} files");

        Assert.Empty(files.SelectMany(file => File.ReadLines(file.File).Where(IsSentence).Select(line => $"{file.Name}: {line.Trim()}")));
    }

    private static bool IsSentence(string line) => Sentence().IsMatch(line) && !Unseen().IsMatch(line);

    [GeneratedRegex("\"[A-Z][a-z]+,? [a-zA-Z]+[^\"]*\"")]
    private static partial Regex Sentence();

    [GeneratedRegex(@"\bLog[A-Z(]|\bthrow\b|Exception\(|//|\[Obsolete|SuppressMessage")]
    private static partial Regex Unseen();
}
