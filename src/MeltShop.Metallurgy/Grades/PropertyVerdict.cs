namespace MeltShop.Metallurgy.Grades;

/// <summary>How a tested property stands to what the grade asks.</summary>
public enum PropertyStanding
{
    /// <summary>Asked for and reached.</summary>
    Meets,

    /// <summary>Asked for and not reached.</summary>
    Fails,

    /// <summary>Asked for and not tested: not tested is not met.</summary>
    NotTested,

    /// <summary>Nothing is asked, or the standard leaves it to an agreement, or gives it for guidance: a person judges.</summary>
    Judged,
}

/// <summary>One property of a test piece against its grade and wall.</summary>
/// <param name="Property">What was tested, or asked.</param>
/// <param name="Value">As tested, in the unit of the property; null where it was not.</param>
/// <param name="Least">Least that is asked; null where nothing is.</param>
/// <param name="Most">Most that is asked; null where nothing is.</param>
/// <param name="Standing">Whether it is reached.</param>
public sealed record PropertyVerdict(CastProperty Property, double? Value, double? Least, double? Most, PropertyStanding Standing)
{
    /// <summary>True where what is asked is known here from memory: no verdict by it counts before the standard was held against it.</summary>
    public bool IsRemembered { get; init; }

    /// <summary>
    /// The verdicts of a test piece: every property that the grade asks of this wall and kind of sample, tested or not, then whatever
    /// else was tested. Values are compared as they are; nothing is rounded first.
    /// </summary>
    /// <param name="grade">What the standard asks; null where the grade has no standard here: everything is left to a person.</param>
    /// <param name="wallMm">Relevant wall, mm, over 0.</param>
    /// <param name="sample">Where the piece comes from.</param>
    /// <param name="values">As tested.</param>
    public static IReadOnlyList<PropertyVerdict> Of(GradeProperties? grade, double wallMm, SampleType sample, IReadOnlyDictionary<CastProperty, double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        var asked = Asked(grade, wallMm, sample).ToDictionary(a => a.Property);
        return
        [
            .. asked.Values.Select(a => Verdict(a, values)),
            .. values.Where(v => !asked.ContainsKey(v.Key)).OrderBy(v => v.Key)
                .Select(v => new PropertyVerdict(v.Key, v.Value, null, null, PropertyStanding.Judged)),
        ];
    }

    // An expected value in the casting is no minimum (EN 1561), and hardness is for guidance unless it was agreed: neither is asked.
    private static IEnumerable<(CastProperty Property, double? Least, double? Most, Formulas.Standing Source)> Asked(GradeProperties? grade, double wallMm, SampleType sample)
    {
        if (grade is null || sample == SampleType.ExpectedInCasting) yield break;
        if (grade.At(wallMm, sample).FirstOrDefault() is { } row)
        {
            if (row.TensileMPa is not null || row.TensileMost is not null) yield return (CastProperty.TensileMPa, row.TensileMPa, row.TensileMost, row.Standing);
            if (row.ProofMPa is not null) yield return (CastProperty.ProofMPa, row.ProofMPa, null, row.Standing);
            if (row.ElongationPercent is not null) yield return (CastProperty.ElongationPercent, row.ElongationPercent, null, row.Standing);
        }

        if (grade.Impact.FirstOrDefault(i => (i.OverMm is not { } over || wallMm > over) && (i.UpToMm is not { } upTo || wallMm <= upTo)) is not { } impact) yield break;
        yield return (CastProperty.ImpactMeanJ, impact.MeanJ, null, impact.Standing);
        if (impact.SingleJ is not null) yield return (CastProperty.ImpactSingleJ, impact.SingleJ, null, impact.Standing);
    }

    private static PropertyVerdict Verdict((CastProperty Property, double? Least, double? Most, Formulas.Standing Source) asked, IReadOnlyDictionary<CastProperty, double> values)
    {
        double? tested = values.TryGetValue(asked.Property, out var value) ? value : null;
        var standing = tested is null ? PropertyStanding.NotTested
            : tested < asked.Least || tested > asked.Most ? PropertyStanding.Fails : PropertyStanding.Meets;
        return new(asked.Property, tested, asked.Least, asked.Most, standing) { IsRemembered = asked.Source == Formulas.Standing.Remembered };
    }
}
