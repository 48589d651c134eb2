namespace MeltShop.Metallurgy.Grades;

/// <summary>
/// What a standard asks of a grade. Designation goes by the thinnest wall class; acceptance by the class of the casting's relevant
/// wall. Chemistry is left to the maker. Remembered rows must be held against a bought copy of the standard before anybody relies on them.
/// </summary>
public sealed record GradeProperties
{
    /// <summary>Designation: <c>EN-GJS-500-7</c>.</summary>
    public required string Code { get; init; }

    /// <summary>Material number where the standard has one: <c>5.3200</c> (from memory).</summary>
    public string? Number { get; init; }

    /// <summary>Standard: <c>EN 1563</c>.</summary>
    public required string Standard { get; init; }

    /// <summary>Edition in which the values stand.</summary>
    public required string Edition { get; init; }

    /// <summary>Kind of iron.</summary>
    public required IronFamily Family { get; init; }

    /// <summary>Usual matrix, for guidance.</summary>
    public string? Matrix { get; init; }

    /// <summary>Tensile minima by sample and wall.</summary>
    public required IReadOnlyList<PropertyRow> Rows { get; init; }

    /// <summary>Impact minima; empty where the grade has none.</summary>
    public IReadOnlyList<ImpactRow> Impact { get; init; } = [];

    /// <summary>Hardness, for guidance; null where not known here.</summary>
    public HardnessRange? Hardness { get; init; }

    /// <summary>What else to know: where prints disagree.</summary>
    public string? Note { get; init; }

    /// <summary>All grades of this room.</summary>
    public static IReadOnlyList<GradeProperties> All { get; } =
        [.. En1563.Grades, .. En1561.Grades, .. AustemperedGrades.Grades, .. AstmGrades.Grades];

    /// <summary>The grade with a designation; null where there is none.</summary>
    public static GradeProperties? For(string code) => All.FirstOrDefault(g => g.Code == code);

    /// <summary>The rows that hold for a wall, of one kind of sample.</summary>
    /// <param name="wallMm">Relevant wall, mm, over 0.</param>
    /// <param name="sample">Kind of sample.</param>
    public IEnumerable<PropertyRow> At(double wallMm, SampleType sample) => Rows.Where(r => r.Sample == sample && r.Covers(wallMm));
}
