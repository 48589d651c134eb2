using AngleSharp.Dom;
using MeltShop.Web.Texts;

namespace MeltShop.Web.Tests.Texts;

/// <summary>Looks through a page drawn in the pseudo-language for words that came from no resource.</summary>
internal static class Marks
{
    /// <summary>A formula's record is printed as it stands and says so: nobody translates a citation.</summary>
    /// <param name="nodes">What was drawn.</param>
    /// <param name="data">Words that are data, not texts: units, codes and names of the records.</param>
    public static IReadOnlyList<string> WordsOutside(INodeList nodes, params IReadOnlyCollection<string> data) =>
        [.. nodes.SelectMany(node => node.DescendantsAndSelf<IText>()).Where(text => text.ParentElement?.Closest("[translate=no]") is null).Select(text => Outside(text.Data, data)).Where(rest => rest.Length > 0)];

    private static string Outside(string text, IReadOnlyCollection<string> data)
    {
        foreach (var word in data.OrderByDescending(word => word.Length)) text = text.Replace(word, "", StringComparison.Ordinal);
        var rest = new System.Text.StringBuilder();
        var depth = 0;
        foreach (var letter in text)
        {
            if (letter == PseudoLanguage.Opening[0]) depth++;
            if (depth == 0 && char.IsLetter(letter)) rest.Append(letter);
            if (letter == PseudoLanguage.Closing[0]) depth--;
        }

        return rest.ToString();
    }
}
