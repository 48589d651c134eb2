using System.Text.RegularExpressions;

namespace MeltShop.Web.Tests.Texts;

public sealed partial class FindingTextTests
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

    /// <summary>A literal such as "mass.negative" that is not the path of a finding, its first argument.</summary>
    [GeneratedRegex(@"(?<!Finding\(|new\(|NotNegative\(|Positive\(|Add\(|Report\()""([a-z][a-zA-Z]+\.[a-z][a-zA-Z0-9]+)""")]
    private static partial Regex Code();
}
