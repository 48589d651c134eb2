using MeltShop.Metallurgy.Formulas;
using static MeltShop.Metallurgy.Formulas.Standing;

namespace MeltShop.Metallurgy.Grades;

/// <summary>EN 1564 / ISO 17804 and the SI and inch sides of ASTM A897: austempered ductile irons.</summary>
internal static class AustemperedGrades
{
    public static IReadOnlyList<GradeProperties> Grades { get; } =
    [
        Old("800-8", 500, 800, 8, 260, 320),
        Old("1000-5", 700, 1000, 5, 300, 360),
        Old("1200-2", 850, 1200, 2, 340, 440),
        New("800-10", (500, 800, 10), (750, 6), (720, 5), 250, 310),
        New("900-8", (600, 900, 8), (850, 5), (820, 4), 280, 340),
        New("1050-6", (700, 1050, 6), (1000, 4), (970, 3), 320, 380),
        New("1200-3", (850, 1200, 3), (1170, 2), (1140, 1), 340, 420),
        New("1400-1", (1100, 1400, 1), null, null, 380, 480, "The same values were read for this grade in the 1997 edition."),
        Astm("750-500-11", 500, 750, 11, 241, 302, 110),
        Astm("900-650-09", 650, 900, 9, 269, 341, 100),
        Astm("1050-750-07", 750, 1050, 7, 302, 375, 80),
        Astm("1200-850-04", 850, 1200, 4, 341, 444, 60),
        Astm("1400-1100-02", 1100, 1400, 2, 388, 477, 35),
        Astm("1600-1300-01", 1300, 1600, 1, 402, 512, 20),
        .. new (int Rm, int Rp, int A)[] { (110, 70, 11), (130, 90, 9), (150, 110, 7), (175, 125, 4), (200, 155, 2), (230, 185, 1) }.Select(Inch),
    ];

    private static GradeProperties Old(string name, double proof, double tensile, double elongation, double least, double most) => Grade(
        $"EN-GJS-{name}", "EN 1564", "1997", [Row(null, null, proof, tensile, elongation, Read)], new(least, most, Read));

    private static GradeProperties New(
        string name, (double Rp, double Rm, double A) thin, (double Rm, double A)? middle, (double Rm, double A)? thick,
        double least, double most, string? note = null) => Grade(
            $"EN-GJS-{name}", "EN 1564 / ISO 17804", "2011 / 2020",
            [
                Row(null, 30, thin.Rp, thin.Rm, thin.A, Remembered),
                Row(30, 60, middle is null ? null : thin.Rp, middle?.Rm, middle?.A, Remembered),
                Row(60, 100, thick is null ? null : thin.Rp, thick?.Rm, thick?.A, Remembered),
            ],
            new(least, most, Remembered)) with { Note = note };

    private static GradeProperties Astm(string name, double proof, double tensile, double elongation, double least, double most, double unnotchedJ) => Grade(
        $"ASTM A897M {name}", "ASTM A897/A897M", "2003", [Row(null, null, proof, tensile, elongation, Read, SampleType.SeparatelyCast)], new(least, most, Read)) with
    {
        Note = $"Unnotched Charpy {unnotchedJ} J. The inch side has other grades, not conversions of these.",
    };

    private static GradeProperties Inch((int Rm, int Rp, int A) grade) => Grade(
        $"ASTM A897 {grade.Rm}-{grade.Rp}-{grade.A:00}", "ASTM A897/A897M", "2003",
        [new(SampleType.SeparatelyCast, null, null, grade.Rm, null, grade.Rp, grade.A, Remembered, StrengthUnit.Ksi)],
        null);

    private static GradeProperties Grade(string code, string standard, string edition, IReadOnlyList<PropertyRow> rows, HardnessRange? hardness) => new()
    {
        Code = code, Standard = standard, Edition = edition, Family = IronFamily.AustemperedDuctile, Matrix = "ausferrite", Rows = rows, Hardness = hardness,
    };

    private static PropertyRow Row(
        double? over, double? upTo, double? proof, double? tensile, double? elongation, Standing standing, SampleType sample = SampleType.CastSample) =>
        new(sample, over, upTo, tensile, null, proof, elongation, standing);
}
