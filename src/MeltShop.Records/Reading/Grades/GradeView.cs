using MeltShop.Records.Grades;

namespace MeltShop.Records.Reading.Grades;

/// <summary>A grade with its windows: furnace iron first, then the iron in the mould; elements in report order, then the rest.</summary>
public sealed record GradeView(
    long Id, Guid Version, string Code, IronFamily Family, string Source, bool IsActive, RecipeView? Recipe, IReadOnlyList<WindowView> Windows)
{
    public IEnumerable<WindowView> At(WindowStage stage) => Windows.Where(w => w.Stage == stage);
}

/// <summary>Least, aim and most in percentage points; <paramref name="Margin"/> is how far inside a plan has to end.</summary>
public sealed record WindowView(WindowStage Stage, string Quantity, double? Least, double? Aim, double? Most, double Margin);

/// <inheritdoc cref="GradeRecipe"/>
public sealed record RecipeView(
    double? TargetMgPercent, double? MgFloorPercent, double? SulphurLeftPercent, string? TreatmentAlloyCode, string? InoculantCode,
    double? InoculantRatePercent, double? MinutesToLastMould, string? CoverCode = null, double? CoverRatePercent = null);
