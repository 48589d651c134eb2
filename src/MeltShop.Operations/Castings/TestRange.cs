using MeltShop.Metallurgy.Grades;

namespace MeltShop.Operations.Castings;

/// <summary>What a tested property can be at all: wide enough for every cast iron, narrow enough to catch a slip of the keys.</summary>
public static class TestRange
{
    /// <summary>Least and most, in the unit of the property.</summary>
    public static (double Least, double Most) Of(CastProperty property) => property switch
    {
        CastProperty.TensileMPa or CastProperty.ProofMPa => (0, 2_500),
        CastProperty.HardnessHbw => (50, 800),
        CastProperty.ImpactMeanJ or CastProperty.ImpactSingleJ => (0, 400),
        CastProperty.NodulesPerMm2 => (0, 10_000),
        CastProperty.GraphiteForm => (1, 6), // I to VI of ISO 945-1
        CastProperty.GraphiteSize => (1, 8),
        _ => (0, 100),
    };
}
