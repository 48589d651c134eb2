using MeltShop.Metallurgy.Formulas;

namespace MeltShop.Metallurgy.Grades;

/// <summary>
/// EN 1563, spheroidal graphite cast irons. Walls up to 30 mm were read in copies of the 1997 edition (one of which prints -LT for
/// the -RT and plain rows, and 450-15 for 400-15: corrected from another copy); thicker walls are remembered.
/// </summary>
internal static class En1563
{
    private const string Ferrite = "ferrite";

    public static IReadOnlyList<GradeProperties> Grades { get; } =
    [
        Grade("350-22-LT", "5.3100", Ferrite, (220, 350, 22), (210, 330, 18), (200, 320, 15), (null, 160),
            [(-40, 12, 9), (-40, 12, 9), (-40, 10, 7)]),
        Grade("350-22-RT", "5.3101", Ferrite, (220, 350, 22), (220, 330, 18), (210, 320, 15), (null, 160), [(23, 17, 14), (23, 17, 14), (23, 15, 12)]),
        Grade("350-22", "5.3102", Ferrite, (220, 350, 22), (220, 330, 18), (210, 320, 15), (null, 160)),
        Grade("400-18-LT", "5.3103", Ferrite, (240, 400, 18), (230, 380, 15), (220, 360, 12), (130, 175),
            [(-20, 12, 9), (-20, 12, 9), (-20, 10, 7)]),
        Grade("400-18-RT", "5.3104", Ferrite, (250, 400, 18), (250, 390, 15), (240, 370, 12), (130, 175), [(23, 14, 11), (23, 14, 11), (23, 12, 9)]),
        Grade("400-18", "5.3105", Ferrite, (250, 400, 18), (250, 390, 15), (240, 370, 12), (130, 175)),
        Grade("400-15", "5.3106", Ferrite, (250, 400, 15), (250, 390, 14), (240, 370, 11), (135, 180)),
        Grade("450-10", "5.3107", "ferrite with some pearlite", (310, 450, 10), null, null, (160, 210)),
        Grade("500-7", "5.3200", "ferrite and pearlite", (320, 500, 7), (300, 450, 7), (290, 420, 5), (170, 230)),
        Grade("600-3", "5.3201", "pearlite and ferrite", (370, 600, 3), (360, 600, 2), (340, 550, 1), (190, 270)),
        Grade("700-2", "5.3300", "pearlite", (420, 700, 2), (400, 700, 2), (380, 650, 1), (225, 305),
            note: "For 60 to 200 mm ISO 1083 is remembered with 660 MPa."),
        Grade("800-2", "5.3301", "pearlite or tempered", (480, 800, 2), null, null, (245, 335)),
        Grade("900-2", "5.3302", "tempered", (600, 900, 2), null, null, (270, 360), note: "An ISO 1083 page reads 280 to 360 HB."),
        Solid("450-18", "5.3108", (350, 450, 18), (340, 430, 14), (170, 200), "Silicon about 3.20 % (EN 1563:2011, annex A)."),
        Solid("500-14", "5.3109", (400, 500, 14), (390, 480, 12), (185, 215), "Silicon about 3.80 % (EN 1563:2011, annex A)."),
        Solid("600-10", "5.3110", (470, 600, 10), (450, 580, 8), (200, 230), "Silicon about 4.30 % (EN 1563:2011, annex A)."),
    ];

    private static GradeProperties Grade(
        string name, string number, string matrix,
        (double Rp, double Rm, double A) thin, (double Rp, double Rm, double A)? middle, (double Rp, double Rm, double A)? thick,
        (double? Least, double Most) hardness, IReadOnlyList<(double T, double Mean, double Single)>? impact = null, string? note = null) => new()
    {
        Code = $"EN-GJS-{name}",
        Number = number,
        Standard = "EN 1563",
        Edition = "1997",
        Family = IronFamily.Ductile,
        Matrix = matrix,
        Rows = [Row(null, 30, thin, Standing.Read), Row(30, 60, middle, Standing.Remembered), Row(60, 200, thick, Standing.Remembered)],
        Hardness = new(hardness.Least, hardness.Most, Standing.Remembered),
        Impact = impact is null ? [] :
        [
            new(impact[0].T, null, 30, impact[0].Mean, impact[0].Single, Standing.Read),
            new(impact[1].T, 30, 60, impact[1].Mean, impact[1].Single, Standing.Read),
            new(impact[2].T, 60, 200, impact[2].Mean, impact[2].Single, Standing.Read),
        ],
        Note = impact is null ? note : "Impact of thicker walls was read in ISO 1083:1987; rules for ships print tighter single values.",
    };

    private static GradeProperties Solid(
        string name, string number, (double Rp, double Rm, double A) thin, (double Rp, double Rm, double A) middle,
        (double Least, double Most) hardness, string note) => new()
    {
        Code = $"EN-GJS-{name}",
        Number = number,
        Standard = "EN 1563",
        Edition = "2018",
        Family = IronFamily.Ductile,
        Matrix = "ferrite strengthened by silicon",
        Rows = [Row(null, 30, thin, Standing.Remembered), Row(30, 60, middle, Standing.Remembered), Row(60, null, null, Standing.Remembered)],
        Hardness = new(hardness.Least, hardness.Most, Standing.Remembered),
        Note = note + " Values up to 30 mm stand alike in public teaching notes that call themselves unverified.",
    };

    private static PropertyRow Row(double? over, double? upTo, (double Rp, double Rm, double A)? values, Standing standing) =>
        new(SampleType.CastSample, over, upTo, values?.Rm, null, values?.Rp, values?.A, standing);
}
