namespace MeltShop.Records.Grades;

/// <summary>How iron of the grade is treated and inoculated unless a ladle says otherwise. Part of the grade's row.</summary>
public sealed class GradeRecipe
{
    /// <summary>Residual magnesium wanted at the last mould, %; null for grey iron.</summary>
    public double? TargetMgPercent { get; set; }

    /// <summary>Least residual magnesium at the last mould, %.</summary>
    public double? MgFloorPercent { get; set; }

    /// <summary>Sulphur left after treatment, %.</summary>
    public double? SulphurLeftPercent { get; set; }

    public string? TreatmentAlloyCode { get; set; }
    public string? InoculantCode { get; set; }

    /// <summary>Inoculant, % of the tapped mass.</summary>
    public double? InoculantRatePercent { get; set; }

    /// <summary>Minutes from the end of the reaction to the end of the pour of the last mould.</summary>
    public double? MinutesToLastMould { get; set; }

    /// <summary>Steel that lies on the treatment alloy and melts in; null where there is none, or nobody said it. Given with its rate only.</summary>
    public string? CoverCode { get; set; }

    /// <summary>Cover steel, % of the tapped mass, 0 or more.</summary>
    public double? CoverRatePercent { get; set; }
}
