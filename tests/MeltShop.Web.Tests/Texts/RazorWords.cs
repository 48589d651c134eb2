using System.Text;
using System.Text.RegularExpressions;

namespace MeltShop.Web.Tests.Texts;

/// <summary>Finds words in razor markup that a person would see and that come from no resource.</summary>
internal static partial class RazorWords
{
    private static readonly string[] SpokenAttributes =
        ["title", "aria-label", "alt", "placeholder", "label", "heading", "words", "help", "empty", "note", "text", "unit"];

    public static IReadOnlyList<string> In(string razor)
    {
        var markup = WithoutCode(Control().Replace(Comment().Replace(razor, ""), "@$1("));
        var found = new List<string>();
        var outside = new StringBuilder();
        var at = 0;
        while (at < markup.Length)
        {
            if (markup[at] == '<' && at + 1 < markup.Length && (char.IsLetter(markup[at + 1]) || markup[at + 1] is '/' or '!'))
            {
                var end = EndOfTag(markup, at);
                found.AddRange(SpokenLiterals(markup[at..end]));
                outside.Append('\n');
                at = end;
            }
            else
            {
                outside.Append(markup[at++]);
            }
        }

        found.AddRange(Word().Matches(Statement().Replace(outside.ToString(), "")).Select(match => match.Value));
        return found;
    }

    /// <summary>Takes out each @expression, with its brackets.</summary>
    private static string WithoutCode(string markup)
    {
        var rest = new StringBuilder();
        var at = 0;
        while (at < markup.Length)
        {
            if (markup[at] != '@')
            {
                rest.Append(markup[at++]);
                continue;
            }

            at++;
            rest.Append('@');
            while (at < markup.Length && (char.IsLetterOrDigit(markup[at]) || markup[at] is '.' or '_' or '?' or '!' or '(' or '['))
            {
                if (markup[at] == '.' && !(at + 1 < markup.Length && char.IsLetter(markup[at + 1]))) break;
                at = markup[at] is '(' or '[' ? AfterBracket(markup, at) : at + 1;
            }
        }

        return Directive().Replace(rest.ToString(), "");
    }

    private static int AfterBracket(string text, int at)
    {
        var depth = 0;
        var isQuoted = false;
        for (; at < text.Length; at++)
        {
            if (text[at] == '"') isQuoted = !isQuoted;
            if (isQuoted) continue;
            if (text[at] is '(' or '[') depth++;
            if (text[at] is ')' or ']' && --depth == 0) return at + 1;
        }

        return at;
    }

    private static int EndOfTag(string text, int at)
    {
        var isQuoted = false;
        for (; at < text.Length; at++)
        {
            if (text[at] == '"') isQuoted = !isQuoted;
            if (text[at] == '>' && !isQuoted) return at + 1;
        }

        return at;
    }

    private static IEnumerable<string> SpokenLiterals(string tag) => Attribute().Matches(tag)
        .Where(match => SpokenAttributes.Contains(match.Groups[1].Value.ToLowerInvariant()))
        .Select(match => match.Groups[2].Value)
        .Where(value => !value.Contains('@', StringComparison.Ordinal) && value.Any(char.IsLetter) && !Unit().IsMatch(value) && IsLiteral(tag, value));

    /// <summary>A component's parameter that is not a string holds C#, not words: it names a member, never a sentence.</summary>
    private static bool IsLiteral(string tag, string value) => !(char.IsUpper(tag[1]) && Member().IsMatch(value));

    [GeneratedRegex(@"@\*.*?\*@", RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"@(if|for|foreach|while|switch)\s*\(")]
    private static partial Regex Control();

    [GeneratedRegex(@"^@\s+.*$", RegexOptions.Multiline)]
    private static partial Regex Directive();

    [GeneratedRegex(@"^\s*((else(\s+if\s*\(.*\))?|case\b.*|default|break)\s*[:;]?|\{|\})\s*$", RegexOptions.Multiline)]
    private static partial Regex Statement();

    [GeneratedRegex(@"\p{L}{2,}")]
    private static partial Regex Word();

    [GeneratedRegex(@"([\w-]+)=""([^""]*)""")]
    private static partial Regex Attribute();

    [GeneratedRegex(@"^(kg|g|t|%|°C|min|mm|€/t|kg/t|t/m³)$")]
    private static partial Regex Unit();

    [GeneratedRegex(@"^[A-Za-z_][\w.?!]*(\(.*\))?$")]
    private static partial Regex Member();
}
