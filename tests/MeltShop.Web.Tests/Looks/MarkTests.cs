using System.Text.RegularExpressions;
using MeltShop.Web.Tests.Repository;

namespace MeltShop.Web.Tests.Looks;

/// <summary>Who sees no colours sees a mark: whatever is coloured for a hand has one, beside its word.</summary>
public sealed partial class MarkTests
{
    [Fact]
    public void Tag_ThatIsColoured_HasAMark() => Offences.None(
        from file in Checkout.FilesEndingIn(".razor")
        from Match tag in Coloured().Matches(Checkout.Read(file))
        where !Mark().IsMatch(tag.Value)
        select $"{file}: {tag.Value.ReplaceLineEndings(" ")}");

    /// <summary>From its class to where it closes.</summary>
    [GeneratedRegex(@"tag-(?:wrong|watch)[^<]*(?:<span aria-hidden[^<]*|<strong[^<]*)?</", RegexOptions.Singleline)]
    private static partial Regex Coloured();

    /// <summary>After the opening tag, or as the first of the words that C# puts there.</summary>
    [GeneratedRegex(@"(?:>|"")\s*[!✕✗≈?≠→◇◆–∅▲∎]")]
    private static partial Regex Mark();
}
