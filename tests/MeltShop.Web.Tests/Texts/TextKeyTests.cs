using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace MeltShop.Web.Tests.Texts;

public sealed partial class TextKeyTests
{
    [Fact]
    public void Keys_UsedByPages_AreInTheirResources()
    {
        var missing = new List<string>();
        var used = 0;
        foreach (var file in Sources.Files("MeltShop.Web", "*.razor"))
        {
            var code = File.Exists(file + ".cs") ? File.ReadAllText(file + ".cs") : "";
            var markup = File.ReadAllText(file);
            foreach (Match localizer in Localizer().Matches(markup + code))
            {
                var keys = Keys(localizer.Groups[1].Value);
                var name = localizer.Groups[2].Value;
                var uses = Regex.Matches(markup + code, $@"\b{name}\[""([^""]+)""\s*[\],]").Select(match => match.Groups[1].Value).ToList();
                used += uses.Count;
                missing.AddRange(uses.Where(key => !keys.Contains(key)).Select(key => $"{Sources.Name(file)}: {key}"));
            }
        }

        Assert.True(used > 30);
        Assert.Empty(missing);
    }

    /// <summary>An apostrophe is one everywhere, and not a straight mark here and a curved one there.</summary>
    [Fact]
    public void Text_Any_HasNoStraightApostrophe() => Assert.Equal("", string.Join("; ", Directory.EnumerateFiles(Path.Combine(Sources.Root, "src", "MeltShop.Web", "Texts"), "*.resx")
        .SelectMany(file => XDocument.Load(file).Root!.Elements("data").Select(data => data.Element("value")!.Value)).Where(value => value.Contains('\'', StringComparison.Ordinal))));

    internal static HashSet<string> Keys(string resource) =>
        [.. XDocument.Load(Path.Combine(Sources.Root, "src", "MeltShop.Web", "Texts", resource + ".resx"))
            .Root!.Elements("data").Select(data => data.Attribute("name")!.Value)];

    [GeneratedRegex(@"IStringLocalizer<(?:Texts\.)?(\w+)>\s+(\w+)")]
    private static partial Regex Localizer();
}
