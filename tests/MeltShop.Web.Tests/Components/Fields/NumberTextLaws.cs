using System.Globalization;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Tests.Components.Fields;

/// <summary>What holds for any number in both notations: ten thousand of each, from a fixed seed.</summary>
public sealed class NumberTextLaws
{
    private const int Seed = 1202, Cases = 10_000;

    [Fact]
    public void Read_OfAnyDecimal_IsTheSameWithACommaAsWithAPoint() => Holds(random =>
    {
        var (text, _) = Decimal(random);
        var range = Range(random);
        var (point, comma) = (NumberText.Read(text, range), NumberText.Read(text.Replace('.', ','), range));

        Assert.Equal((point.Value, point.Finding?.Code), (comma.Value, comma.Finding?.Code));
        Assert.Equal(point.Choices, comma.Choices);
    });

    [Fact]
    public void Read_OfAnyDecimal_IsItsNumberOrAQuestionAndNeverAThousand() => Holds(random =>
    {
        var (text, value) = Decimal(random);
        var reading = NumberText.Read(text, Range(random));

        if (reading.Value is { } read) Assert.Equal(value, read);
        else Assert.True(reading.Finding?.Code is "number.ambiguous" or "number.thousands", text);
        if (reading.Choices.Count > 0) Assert.Equal(value, reading.Choices[0]);
    });

    [Fact]
    public void Read_OfAnyGroupedNumber_IsRefusedInBothNotations() => Holds(random =>
    {
        var digits = random.Next(1_000_000, 2_000_000_000).ToString("N0", CultureInfo.InvariantCulture); // 1,234,567
        foreach (var mark in new[] { ",", ".", " ", "\u00a0", "\u202f", "'" })
        {
            Assert.Equal("number.thousands", NumberText.Read(digits.Replace(",", mark, StringComparison.Ordinal), new NumberRange()).Finding?.Code);
        }
    });

    [Theory]
    [InlineData("en-GB")]
    [InlineData("de-DE")]
    public void Unmistakable_OfAnyNumber_IsReadAsItAndAsNothingElse(string culture) => Holds(random =>
    {
        var (_, value) = Decimal(random);
        var reading = NumberText.Read(NumberText.Unmistakable(value, CultureInfo.GetCultureInfo(culture)), new NumberRange());

        Assert.Equal(value, reading.Value);
        Assert.Empty(reading.Choices);
    });

    /// <summary>A number of 1 to 6 digits before the point and 0 to 6 behind it, as it is typed.</summary>
    private static (string Text, double Value) Decimal(Random random)
    {
        var places = random.Next(0, 7);
        var whole = random.Next(0, (int)Math.Pow(10, random.Next(1, 7))).ToString(CultureInfo.InvariantCulture);
        var text = places == 0 ? whole : $"{whole}.{string.Concat(Enumerable.Range(0, places).Select(_ => random.Next(0, 10)))}";
        if (random.Next(0, 4) == 0) text = "-" + text;
        return (text, double.Parse(text, CultureInfo.InvariantCulture));
    }

    private static NumberRange Range(Random random) => random.Next(0, 3) switch { 0 => new(), 1 => new(0, 100), _ => new(0, 60_000) };

    private static void Holds(Action<Random> law)
    {
        Xunit.TestContext.Current.TestOutputHelper?.WriteLine($"seed {Seed}, {Cases} cases");
        var random = new Random(Seed);
        for (var number = 0; number < Cases; number++)
        {
            law(random);
        }
    }
}
