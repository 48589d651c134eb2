using MeltShop.Metallurgy.Formulas;
using MeltShop.Metallurgy.Grades;

namespace MeltShop.Metallurgy.Tests.Grades;

public class GradePropertiesTests
{
    // EN 1563, copies of the 1997 edition, wall up to 30 mm: Rp0.2 / Rm / A.
    [Theory]
    [Printed("EN 1563, copies of the 1997 edition")]
    [InlineData("EN-GJS-350-22-LT", 220, 350, 22)]
    [InlineData("EN-GJS-400-18", 250, 400, 18)]
    [InlineData("EN-GJS-400-15", 250, 400, 15)]
    [InlineData("EN-GJS-450-10", 310, 450, 10)]
    [InlineData("EN-GJS-500-7", 320, 500, 7)]
    [InlineData("EN-GJS-600-3", 370, 600, 3)]
    [InlineData("EN-GJS-700-2", 420, 700, 2)]
    [InlineData("EN-GJS-800-2", 480, 800, 2)]
    [InlineData("EN-GJS-900-2", 600, 900, 2)]
    public void For_En1563Grade_HasTheMinimaAsRead(string code, double proof, double tensile, double elongation)
    {
        var row = Assert.Single(GradeProperties.For(code)!.At(25, SampleType.CastSample));

        Assert.Equal((proof, tensile, elongation, Standing.Read), (row.ProofMPa, row.TensileMPa, row.ElongationPercent, row.Standing));
    }

    [Fact]
    public void At_ThickerWall_TakesTheNextClass()
    {
        // From memory, to be held against a bought copy: 500-7 falls to 450 over 30 and 420 over 60 mm.
        var grade = GradeProperties.For("EN-GJS-500-7")!;

        Assert.Equal([500, 500, 450, 420], new[] { 5.0, 30, 30.1, 61 }.Select(w => grade.At(w, SampleType.CastSample).Single().Tensile!.Value));
        Assert.All(grade.Rows.Skip(1), r => Assert.Equal(Standing.Remembered, r.Standing));
        Assert.Empty(grade.At(201, SampleType.CastSample));
    }

    [Fact]
    public void At_WallLeftToAgreement_SaysSo() => Assert.True(GradeProperties.For("EN-GJS-450-10")!.At(40, SampleType.CastSample).Single().ByAgreement);

    // EN 1561, 1997 columns as read: separately cast bar least and most, cast-on 20-40 mm, expected in the casting 10-20 mm.
    [Theory]
    [Printed("EN 1561, columns of the 1997 edition")]
    [InlineData("EN-GJL-150", 150, 250, 120, 130)]
    [InlineData("EN-GJL-200", 200, 300, 170, 180)]
    [InlineData("EN-GJL-250", 250, 350, 210, 225)]
    [InlineData("EN-GJL-300", 300, 400, 250, 270)]
    public void For_En1561Grade_HasTheThreeColumns(string code, double least, double most, double castOn, double expected)
    {
        var grade = GradeProperties.For(code)!;
        var bar = grade.Rows.Single(r => r.Sample == SampleType.SeparatelyCast);

        Assert.Equal((least, most), (bar.Tensile, bar.TensileMost));
        Assert.Equal(castOn, grade.At(30, SampleType.CastSample).Single().Tensile);
        Assert.Equal(expected, grade.At(15, SampleType.ExpectedInCasting).Single().Tensile);
    }

    // ASTM A536 as printed in psi and, in public teaching notes, in MPa: 414/276 … 827/621.
    [Theory]
    [Printed("ASTM A536 in psi; public teaching notes in MPa")]
    [InlineData("60-40-18", 414, 276)]
    [InlineData("65-45-12", 448, 310)]
    [InlineData("80-55-06", 552, 379)]
    [InlineData("100-70-03", 689, 483)]
    [InlineData("120-90-02", 827, 621)]
    public void For_A536Grade_ConvertsToThePrintedMPa(string name, double tensile, double proof)
    {
        var row = GradeProperties.For($"ASTM A536 {name}")!.Rows[0];

        Assert.Equal((tensile, proof), (Math.Round(row.TensileMPa!.Value), Math.Round(row.ProofMPa!.Value)));
    }

    // ASTM A48 class minima in MPa, printed: 138 … 414.
    [Theory]
    [InlineData(20, 138)]
    [InlineData(25, 172)]
    [InlineData(30, 207)]
    [InlineData(35, 241)]
    [InlineData(40, 276)]
    [InlineData(45, 310)]
    [InlineData(50, 345)]
    [InlineData(55, 379)]
    [InlineData(60, 414)]
    public void For_A48Class_ConvertsToThePrintedMPa(int number, double expected) =>
        Assert.Equal(expected, Math.Round(GradeProperties.For($"ASTM A48 {number}")!.Rows[0].TensileMPa!.Value));

    [Fact]
    [Printed("ASTM A897/A897M-03")]
    public void For_A897Sides_AreNotConversionsOfEachOther()
    {
        // ASTM A897/A897M-03: 130-90-09 is 896/621 MPa, the SI grade of that place 900/650.
        var inch = GradeProperties.For("ASTM A897 130-90-09")!.Rows[0];
        var metric = GradeProperties.For("ASTM A897M 900-650-09")!.Rows[0];

        Assert.Equal((896, 621), (Math.Round(inch.TensileMPa!.Value), Math.Round(inch.ProofMPa!.Value)));
        Assert.Equal((900, 650), (metric.TensileMPa, metric.ProofMPa));
    }

    [Theory]
    [Printed("EN 1564:1997")]
    [InlineData("EN-GJS-800-8", 500, 800, 260, 320)]
    [InlineData("EN-GJS-1000-5", 700, 1000, 300, 360)]
    [InlineData("EN-GJS-1200-2", 850, 1200, 340, 440)]
    [InlineData("EN-GJS-1400-1", 1100, 1400, 380, 480)]
    public void For_En1564Grade_HasTheValuesAsRead(string code, double proof, double tensile, double least, double most)
    {
        // EN 1564:1997 as read; 1400-1 stands alike in the remembered 2011 table.
        var grade = GradeProperties.For(code)!;

        Assert.Equal((proof, tensile), (grade.Rows[0].ProofMPa, grade.Rows[0].TensileMPa));
        Assert.Equal((least, most), (grade.Hardness!.Least, grade.Hardness.Most));
    }

    [Fact]
    public void Impact_LowTemperatureGrade_HasMeanAndSingle()
    {
        // EN 1563:1997, 350-22-LT at −40 °C: mean 12 J, single 9 J.
        var impact = GradeProperties.For("EN-GJS-350-22-LT")!.Impact[0];

        Assert.Equal((-40, 12, 9), (impact.TemperatureC, impact.MeanJ, impact.SingleJ));
    }

    [Fact]
    public void All_Designations_SayTheirOwnThinnestMinimum()
    {
        // EN 1563 and EN 1564: the designation carries Rm and A of the thinnest class; EN 1561 the Rm of the bar.
        Assert.All(GradeProperties.All.Where(g => g.Code.StartsWith("EN-", StringComparison.Ordinal)), g =>
        {
            var parts = g.Code.Split('-');
            Assert.Equal(parts[2], g.Rows[0].Tensile!.Value.ToString(System.Globalization.CultureInfo.InvariantCulture));
            if (parts.Length > 3) Assert.Equal(parts[3], g.Rows[0].ElongationPercent!.Value.ToString(System.Globalization.CultureInfo.InvariantCulture));
        });
        Assert.Distinct(GradeProperties.All.Select(g => g.Code));
    }

    [Fact]
    public void All_ThickerWalls_NeverAskForMore() => Assert.All(GradeProperties.All, grade =>
        Assert.All(grade.Rows.GroupBy(r => r.Sample), rows =>
        {
            var given = rows.Where(r => r.Tensile is not null).ToList();
            Assert.All(given.Zip(given.Skip(1)), pair => Assert.True(pair.Second.Tensile <= pair.First.Tensile));
        }));

    [Fact]
    public void For_UnknownCode_IsNull() => Assert.Null(GradeProperties.For("EN-GJS-501-7"));
}
