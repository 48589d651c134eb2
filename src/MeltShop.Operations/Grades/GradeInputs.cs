using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Metallurgy.Route;
using MeltShop.Operations.Checking;
using MeltShop.Records.Grades;

namespace MeltShop.Operations.Grades;

/// <summary>Least, aim and most of one quantity at one stage, in its unit.</summary>
/// <param name="Quantity">Name of a <see cref="WindowQuantity"/>.</param>
public sealed record GradeWindowInput(WindowStage Stage, string Quantity, double? Least, double? Aim, double? Most, double Margin = 0);

/// <summary>How iron of the grade is treated and inoculated unless a ladle says otherwise; see <see cref="GradeRecipe"/>.</summary>
public sealed record GradeRecipeInput(
    double? TargetMgPercent,
    double? MgFloorPercent,
    double? SulphurLeftPercent,
    string? TreatmentAlloyCode,
    string? InoculantCode,
    double? InoculantRatePercent,
    double? MinutesToLastMould,
    string? CoverCode = null,
    double? CoverRatePercent = null);

internal static class GradeInputs
{
    public static void Check(this FieldCheck fields, string path, GradeWindowInput window)
    {
        fields.Choice($"{path}.stage", window.Stage);
        if (WindowQuantity.Find(window.Quantity) is not { } quantity) fields.Add($"{path}.quantity", "quantity.unknown", window.Quantity);
        else
        {
            fields.Bound($"{path}.least", window.Least, quantity);
            fields.Bound($"{path}.aim", window.Aim, quantity);
            fields.Bound($"{path}.most", window.Most, quantity);
            if (quantity.Iron == IronState.Poured && window.Stage == WindowStage.Furnace) fields.Add($"{path}.quantity", "quantity.pouredOnly", window.Quantity);
        }

        fields.NotNegative($"{path}.margin", window.Margin);
        if (window is { Least: null, Aim: null, Most: null }) fields.Add(path, "window.empty");
        if (window.Least > window.Most) fields.Add($"{path}.least", "window.crossed", window.Least, window.Most!);
        else if (window.Most - window.Least < 2 * window.Margin) fields.Add($"{path}.margin", "window.marginTooWide", window.Margin);
        if (window.Aim < window.Least || window.Aim > window.Most) fields.Add($"{path}.aim", "window.aimOutside", window.Aim);
    }

    /// <summary>What a formula was not found for: it would judge iron of the family by a number without a meaning.</summary>
    public static Finding? Unmeant(string path, WindowStage stage, string name, IronFamily family) => WindowQuantity.Find(name) switch
    {
        { IsOfUntreatedIron: true } when stage == WindowStage.Poured && family != IronFamily.Grey => new($"{path}.quantity", "quantity.untreatedOnly", name),
        { IsOfTreatedIron: true } when family == IronFamily.Grey => new($"{path}.quantity", "quantity.treatedOnly", name),
        _ => null,
    };

    public static void Check(this FieldCheck fields, string path, GradeRecipeInput recipe, IronFamily family)
    {
        fields.Percent($"{path}.targetMgPercent", recipe.TargetMgPercent);
        fields.Percent($"{path}.mgFloorPercent", recipe.MgFloorPercent);
        fields.Percent($"{path}.sulphurLeftPercent", recipe.SulphurLeftPercent);
        fields.Percent($"{path}.inoculantRatePercent", recipe.InoculantRatePercent);
        fields.Percent($"{path}.coverRatePercent", recipe.CoverRatePercent);
        // Half of it would be reckoned as none without a word.
        if (recipe is { CoverCode: not null, CoverRatePercent: null }) fields.Add($"{path}.coverRatePercent", "number.missing");
        if (recipe is { CoverCode: null, CoverRatePercent: not null }) fields.Add($"{path}.coverCode", "choice.missing");
        if (recipe.MinutesToLastMould is { } minutes) fields.NotNegative($"{path}.minutesToLastMould", minutes);
        if (recipe.TargetMgPercent < recipe.MgFloorPercent)
        {
            fields.Add($"{path}.targetMgPercent", "magnesium.targetBelowFloor", recipe.TargetMgPercent, recipe.MgFloorPercent!);
        }

        if (family == IronFamily.Ductile)
        {
            if (recipe.TargetMgPercent is null) fields.Add($"{path}.targetMgPercent", "magnesium.missing");
            if (recipe.MgFloorPercent is null) fields.Add($"{path}.mgFloorPercent", "magnesium.missing");
            if (recipe.SulphurLeftPercent is null) fields.Add($"{path}.sulphurLeftPercent", "sulphur.missing");
        }

        if (family == IronFamily.Grey && recipe.TargetMgPercent is not null) fields.Add($"{path}.targetMgPercent", "magnesium.inGreyIron");
    }

    public static GradeWindow Row(this GradeWindowInput window, long gradeId = 0) => new()
    {
        GradeId = gradeId,
        Stage = window.Stage,
        Quantity = window.Quantity,
        Least = window.Least,
        Aim = window.Aim,
        Most = window.Most,
        Margin = window.Margin,
    };

    public static GradeRecipe Row(this GradeRecipeInput recipe) => new()
    {
        TargetMgPercent = recipe.TargetMgPercent,
        MgFloorPercent = recipe.MgFloorPercent,
        SulphurLeftPercent = recipe.SulphurLeftPercent,
        TreatmentAlloyCode = recipe.TreatmentAlloyCode,
        InoculantCode = recipe.InoculantCode,
        InoculantRatePercent = recipe.InoculantRatePercent,
        MinutesToLastMould = recipe.MinutesToLastMould,
        CoverCode = recipe.CoverCode,
        CoverRatePercent = recipe.CoverRatePercent,
    };
}
