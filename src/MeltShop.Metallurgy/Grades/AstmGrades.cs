using MeltShop.Metallurgy.Formulas;
using static MeltShop.Metallurgy.Formulas.Standing;

namespace MeltShop.Metallurgy.Grades;

/// <summary>ASTM A536 (ductile) and A48 (grey), inch side as read; the controlling wall of a bar is remembered.</summary>
internal static class AstmGrades
{
    public static IReadOnlyList<GradeProperties> Grades { get; } =
    [
        Ductile("60-40-18", 60, 40, 18, null, 170, "ferrite, may be annealed"),
        Ductile("65-45-12", 65, 45, 12, 156, 217, "ferrite and pearlite"),
        Ductile("80-55-06", 80, 55, 6, 187, 255, "pearlite and ferrite"),
        Ductile("100-70-03", 100, 70, 3, 241, 302, "pearlite, usually normalised"),
        Ductile("120-90-02", 120, 90, 2, null, null, "tempered martensite"),
        .. new (int Class, double? Hardness)[] { (20, 156), (25, 174), (30, 210), (35, 212), (40, 235), (45, null), (50, 262), (55, null), (60, 302) }.Select(Grey),
    ];

    private static GradeProperties Ductile(string name, double tensile, double proof, double elongation, double? least, double? most, string matrix) => new()
    {
        Code = $"ASTM A536 {name}",
        Standard = "ASTM A536",
        Edition = "edition not stated in the copy read",
        Family = IronFamily.Ductile,
        Matrix = matrix,
        Rows = [new(SampleType.SeparatelyCast, null, null, tensile, null, proof, elongation, Read, StrengthUnit.Ksi)],
        Hardness = least is null && most is null ? null : new(least, most, Read),
        Note = "Elongation in 2 in (50 mm). Hardness is that of the analogue in SAE J434.",
    };

    private static GradeProperties Grey((int Class, double? Hardness) grade) => new()
    {
        Code = $"ASTM A48 {grade.Class}",
        Standard = "ASTM A48",
        Edition = "edition not stated in the copy read",
        Family = IronFamily.Grey,
        Rows = [new(SampleType.SeparatelyCast, null, null, grade.Class, null, null, null, Read, StrengthUnit.Ksi)],
        Hardness = grade.Hardness is { } typical ? new(typical, typical, Remembered) : null,
        Note = "Strength in a separately cast bar: A 0.88 in, B 1.2 in, C 2.0 in, S as agreed; the letter belongs to the order. Hardness is a typical value.",
    };
}
