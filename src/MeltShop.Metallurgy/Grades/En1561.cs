using MeltShop.Metallurgy.Formulas;
using static MeltShop.Metallurgy.Formulas.Standing;

namespace MeltShop.Metallurgy.Grades;

/// <summary>
/// EN 1561, grey cast irons: tensile strength in the separately cast 30 mm bar, in cast-on samples, and as expected in the
/// casting, columns of the 1997 edition. Annex E of the newer edition is another, higher curve: 270 MPa at 40 mm for GJL-300.
/// </summary>
internal static class En1561
{
    private static readonly (double Over, double UpTo)[] CastOn = [(20, 40), (40, 80), (80, 150), (150, 300)];

    private static readonly (double Over, double UpTo)[] Casting = [(2.5, 5), (5, 10), (10, 20), (20, 40), (40, 80), (80, 150)];

    public static IReadOnlyList<GradeProperties> Grades { get; } =
    [
        Grade(100, 200, Remembered, [], Remembered, [], Remembered),
        Grade(150, 250, Read, [120, 110, 100, 90], Read, [180, 155, 130, 110, 95, 80], Read),
        Grade(200, 300, Read, [170, 150, 140, 130], Read, [230, 205, 180, 155, 130, 115], Read),
        Grade(250, 350, Read, [210, 190, 170, 160], Read, [null, 250, 225, 195, 170, 155], Read),
        Grade(300, 400, Remembered, [250, 220, 210, 190], Read, [null, null, 270, 240, 210, 195], Read,
            "The page that was read prints 250 to 350 for the separately cast bar: a slip."),
        Grade(350, 450, Remembered, [290, 260, 230, 210], Remembered, [null, null, 315, 280, 250, 225], Remembered),
    ];

    private static GradeProperties Grade(
        int strength, int most, Standing bar, double?[] castOn, Standing castOnStanding, double?[] casting, Standing castingStanding, string? note = null) => new()
    {
        Code = $"EN-GJL-{strength}",
        Standard = "EN 1561",
        Edition = "1997",
        Family = IronFamily.Grey,
        Matrix = strength < 200 ? "ferrite and pearlite" : "pearlite",
        Rows =
        [
            new(SampleType.SeparatelyCast, strength == 100 ? 5 : null, strength == 100 ? 40 : null, strength, most, null, null, bar),
            // 150 to 300 mm cast on, and 2.5 to 5 mm in the casting, are remembered whatever the rest of the row is.
            .. Rows(SampleType.CastSample, CastOn, castOn, i => i == 3 ? Remembered : castOnStanding),
            .. Rows(SampleType.ExpectedInCasting, Casting, casting, i => i == 0 ? Remembered : castingStanding),
        ],
        Note = note,
    };

    private static IEnumerable<PropertyRow> Rows(SampleType sample, (double Over, double UpTo)[] walls, double?[] values, Func<int, Standing> standing) =>
        values.Select((value, i) => new PropertyRow(sample, walls[i].Over, walls[i].UpTo, value, null, null, null, standing(i))).Where(r => !r.ByAgreement);
}
