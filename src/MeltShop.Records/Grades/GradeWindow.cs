namespace MeltShop.Records.Grades;

public enum WindowStage
{
    /// <summary>Furnace iron, before treatment.</summary>
    Furnace,

    /// <summary>The iron in the mould.</summary>
    Poured,
}

/// <summary>Least, aim and most of one quantity at one stage, in its unit; at least one of them is given.</summary>
public sealed class GradeWindow
{
    public long Id { get; init; }
    public long GradeId { get; init; }
    public required WindowStage Stage { get; init; }

    /// <summary>An element symbol, <c>CE</c> or another derived quantity.</summary>
    public required string Quantity { get; init; }

    public double? Least { get; set; }
    public double? Aim { get; set; }
    public double? Most { get; set; }

    /// <summary>How far inside plans and corrections have to end.</summary>
    public double Margin { get; set; }
}
