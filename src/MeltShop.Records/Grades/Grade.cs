using MeltShop.Records.Keeping;

namespace MeltShop.Records.Grades;

public enum IronFamily
{
    Grey,
    Ductile,
}

public sealed class Grade : IVersioned
{
    public long Id { get; init; }

    /// <summary>Designation after the standard, for example <c>EN-GJS-500-7</c>.</summary>
    public required string Code { get; set; }

    public required IronFamily Family { get; set; }

    /// <summary>Where the windows come from.</summary>
    public required string Source { get; set; }

    public GradeRecipe? Recipe { get; set; }
    public List<GradeWindow> Windows { get; init; } = [];
    public bool IsActive { get; set; } = true;
    public Guid Version { get; set; }
}
