using System.Text.RegularExpressions;
using Bunit;
using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Grades;
using MeltShop.Records.Heats;
using MeltShop.Records.Ladles;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Tests.Components;

namespace MeltShop.Web.Tests.Texts;

public sealed partial class FindingTextTests : ComponentTest
{
    [Fact]
    public void Codes_UsedAnywhere_HaveAText()
    {
        var texts = TextKeyTests.Keys("Findings");
        string[] rooms = ["MeltShop.Metallurgy", "MeltShop.Charging", "MeltShop.Records", "MeltShop.Operations", "MeltShop.Web"];
        var codes = rooms.SelectMany(room => Sources.Files(room, "*.cs"))
            .Select(file => (File: file, Source: File.ReadAllText(file)))
            .Where(source => source.Source.Contains("Finding", StringComparison.Ordinal))
            .SelectMany(source => Code().Matches(source.Source).Select(match => $"{match.Groups[1].Value} ({Sources.Name(source.File)})"))
            .Distinct()
            .ToList();

        Assert.Contains(codes, code => code.StartsWith("percent.negative ", StringComparison.Ordinal));
        Assert.All(codes, code => Assert.Contains(code.Split(' ')[0], texts));
    }

    [Fact]
    public void Members_OfEnumerationsThatFindingsName_HaveWords()
    {
        var texts = TextKeyTests.Keys("Findings");

        Assert.All(
            [
                .. Enum.GetNames<HeatState>().Concat(Enum.GetNames<TreatedLadleState>()).Select(name => $"State.{name}"),
                .. Enum.GetNames<PouringLimitKind>().Select(name => $"Limit.{name}"), .. Enum.GetNames<CastProperty>().Select(name => $"Property.{name}"),
            ],
            key => Assert.Contains(key, texts));
        Assert.Equal(["Limit", "Property", "Quantity", "State"], FindingWords.Groups.Values.Distinct().Order());
    }

    [Fact]
    public void State_InAFinding_IsSaidInWords()
    {
        Assert.EndsWith("(state: castings held).", Draw("state.wrong", "Held"), StringComparison.Ordinal);
        Assert.EndsWith("poured after its limit (house rule).", Draw("mould.late", "M7", "HouseRule"), StringComparison.Ordinal);
        Assert.Contains("Mould Held was", Draw("mould.late", "Held", "Magnesium"), StringComparison.Ordinal); // a name is a name
    }

    private string Draw(string code, params object[] arguments) =>
        Render<FindingText>(p => p.Add(text => text.Finding, new Finding("", code, arguments))).Find(".wrong-mark").ParentElement!.TextContent.Trim();

    /// <summary>A literal such as "mass.negative" that is not the path of a finding, its first argument.</summary>
    [GeneratedRegex(@"(?<!Finding\(|new\(|NotNegative\(|Positive\(|Add\(|Report\()""([a-z][a-zA-Z]+\.[a-z][a-zA-Z0-9]+)""")]
    private static partial Regex Code();
}
