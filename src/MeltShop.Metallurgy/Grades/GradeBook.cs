namespace MeltShop.Metallurgy.Grades;

/// <summary>The grades of the standards with the user's own on top: an own grade of the same designation goes before the standard's.</summary>
public sealed class GradeBook
{
    private readonly Dictionary<string, GradeProperties> grades;

    /// <summary>A book.</summary>
    /// <param name="own">The user's own grades, their standard and edition said as the user orders them.</param>
    public GradeBook(IEnumerable<GradeProperties> own)
    {
        ArgumentNullException.ThrowIfNull(own);
        grades = GradeProperties.All.ToDictionary(g => g.Code);
        foreach (var grade in own) grades[grade.Code] = grade;
    }

    /// <summary>All grades, each once.</summary>
    public IReadOnlyCollection<GradeProperties> All => grades.Values;

    /// <summary>The grade with a designation; null where there is none.</summary>
    public GradeProperties? For(string code) => grades.GetValueOrDefault(code);
}
