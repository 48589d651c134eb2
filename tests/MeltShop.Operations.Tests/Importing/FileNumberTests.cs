using System.Globalization;
using System.Text;
using MeltShop.Operations.Importing;
using MeltShop.Operations.Importing.Maps;
using MeltShop.Operations.Tests.Importing.Corrupted;

namespace MeltShop.Operations.Tests.Importing;

/// <summary>Numbers in both notations: the file's decimal sign is read exactly, the other one never guessed at.</summary>
public sealed class FileNumberTests
{
    private const int Seed = 20261125, Cases = 3000;

    public static TheoryData<DecimalSign> Signs => [DecimalSign.Point, DecimalSign.Comma];

    [Theory]
    [MemberData(nameof(Signs))]
    public void Number_OfAnyValueInTheFilesNotation_ReadsAsThatValue(DecimalSign sign)
    {
        TestContext.Current.TestOutputHelper!.WriteLine($"seed {Seed}, {Cases} cases");
        var random = new Random(Seed);
        var texts = Enumerable.Range(0, Cases).Select(_ => Written(random, sign)).ToList();
        var file = Read(sign, texts);

        Assert.Empty(file.Faults);
        Assert.Equal(texts.Select(t => (Value(t, sign), t.Contains('<', StringComparison.Ordinal), t)), file.Samples.Select(s => s.Rows[0].Readings[0]).Select(r => (r.Percent, r.BelowDetection, r.InstrumentText)));
    }

    [Theory]
    [MemberData(nameof(Signs))]
    public void Number_InTheOtherNotation_IsRefusedHoweverItLooks(DecimalSign sign)
    {
        TestContext.Current.TestOutputHelper!.WriteLine($"seed {Seed}, {Cases} cases");
        var random = new Random(Seed);
        var other = sign == DecimalSign.Comma ? DecimalSign.Point : DecimalSign.Comma;
        var texts = Enumerable.Range(0, Cases).Select(_ => Written(random, other)).Where(t => t.Contains('.', StringComparison.Ordinal) || t.Contains(',', StringComparison.Ordinal)).ToList();
        var file = Read(sign, texts);

        Assert.Empty(file.Samples);
        Assert.All(file.Faults, f => Assert.Equal("importNumber.otherSign", f.Code));
        Assert.Equal(texts.Count, file.Faults.Count);
    }

    [Theory]
    [InlineData("1.234.5", "importNumber.unreadable")]
    [InlineData("1,234.5", "importNumber.otherSign")]
    [InlineData("1 234", "importNumber.unreadable")]
    [InlineData("3.", "importNumber.unreadable")]
    [InlineData(".5", "importNumber.unreadable")]
    [InlineData("1e2", "importNumber.unreadable")]
    [InlineData("+1", "importNumber.unreadable")]
    [InlineData("0x1F", "importNumber.unreadable")]
    [InlineData("NaN", "importNumber.unreadable")]
    [InlineData("٣.٥", "importNumber.unreadable")]
    [InlineData("<", "importNumber.unreadable")]
    [InlineData("<<1", "importNumber.unreadable")]
    [InlineData("3.6 %", "importNumber.unreadable")]
    [InlineData("#N/A", "importNumber.unreadable")]
    [InlineData("-0.1", "percent.negative")]
    [InlineData("100.1", "percent.over100")]
    public void Number_ThatIsNone_IsRefusedWithItsReason(string text, string code)
    {
        var file = Read(DecimalSign.Point, [text]);

        Assert.Equal((2, "C", text, code), file.Faults.Select(f => (f.Line, f.Column, f.Text, f.Code)).Single());
    }

    private static ReadFile Read(DecimalSign sign, IReadOnlyList<string> texts)
    {
        var map = SampleFiles.Map with
        {
            DecimalSign = sign,
            Separator = '\t',
            UsualKind = Records.Laboratory.SampleKind.Bath,
            Columns = [new(0, "Nr", ColumnRole.SampleNumber), new(1, "Heat", ColumnRole.Heat), new(2, "Taken", ColumnRole.TakenAt), new(3, "C", ColumnRole.Element, "C")],
        };
        var rows = texts.Select((text, i) => $"{i}\tH1\t2026-03-02 07:00:00\t{text}").Prepend("Nr\tHeat\tTaken\tC");
        return ReadFile.Of(Encoding.UTF8.GetBytes(string.Join('\n', rows)), map, TimeZoneInfo.Utc, DateTimeOffset.MaxValue);
    }

    /// <summary>A percentage as instruments write it: some decimals, sometimes below detection, sometimes with blanks around.</summary>
    private static string Written(Random random, DecimalSign sign)
    {
        var text = (random.NextDouble() * Math.Pow(10, random.Next(-5, 3))).ToString($"F{random.Next(0, 7)}", CultureInfo.InvariantCulture);
        if (sign == DecimalSign.Comma) text = text.Replace('.', ',');
        return (random.Next(5) == 0 ? random.Next(2) == 0 ? "<" : "< " : "") + text;
    }

    private static double Value(string text, DecimalSign sign) =>
        (double)decimal.Parse(text.TrimStart('<', ' ').Replace(sign == DecimalSign.Comma ? ',' : '.', '.'), NumberStyles.Number, CultureInfo.InvariantCulture);
}
