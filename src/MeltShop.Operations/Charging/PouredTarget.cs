using MeltShop.Metallurgy.Elements;
using MeltShop.Metallurgy.Quantities;
using MeltShop.Metallurgy.Route;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Checking;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Yard;
using MeltShop.Records.Yard;

namespace MeltShop.Operations.Charging;

/// <summary>What the furnace iron has to hold so that the poured iron lies in its window, by the grade's recipe.</summary>
internal static class PouredTarget
{
    /// <summary>The rows, or findings at what is missing of the recipe. What only the furnace window limits stays.</summary>
    public static IReadOnlyList<TargetRow> Rows(ChargeView data, GradeView grade, ChargeChoice choice, FieldCheck fields)
    {
        var poured = ChargeLimits.Chosen(grade.At(WindowStage.Poured), choice.Limits, fields).SelectMany(TargetRow.Of).ToList();
        if (poured.Count == 0) fields.Add("target", "grade.noPouredWindow", grade.Code);
        if (Route(data, grade, choice, fields) is not { } route || poured.Count == 0) return [];
        poured.AddRange(AddedLimits.Poured(grade, choice, fields));
        var window = FurnaceWindow.For(route, [.. poured.Select(row => new QuantityBounds(row.Quantity, row.Bounds))]);
        foreach (var finding in window.Findings) fields.Add("target", finding.Code, [.. finding.Arguments]);
        List<TargetRow> rows =
        [
            .. window.Rows.Select(row => poured.FirstOrDefault(asked => asked.Name == row.Quantity.Name) is { } asked && !IsRoutes(row, route)
                ? new TargetRow(row.Quantity, row.Bounds, asked.Margin, asked.Window) { IsAdded = asked.IsAdded }
                : new TargetRow(row.Quantity, row.Bounds, 0, null)),
        ];
        var furnace = grade.At(WindowStage.Furnace).Where(row => rows.All(turned => turned.Name != row.Quantity));
        return [.. rows, .. ChargeLimits.Chosen(furnace, choice.Limits, fields).SelectMany(TargetRow.Of)];
    }

    /// <summary>The sulphur that the treatment was planned with is asked by the route.</summary>
    private static bool IsRoutes(QuantityBounds row, PouringRoute route) => route.Treatment is not null && row.Quantity.Name == Element.S.Symbol;

    private static PouringRoute? Route(ChargeView data, GradeView grade, ChargeChoice choice, FieldCheck fields)
    {
        var recipe = grade.Recipe;
        var inoculant = Material(data, recipe?.InoculantCode);
        if (inoculant is null || recipe?.InoculantRatePercent is null) fields.Add("target", "recipe.noInoculant", grade.Code);
        var treatment = grade.Family == IronFamily.Ductile ? Treatment(data, grade, choice, fields) : null;
        if (fields.Findings.Count > 0) return null;
        return new(treatment, [new RouteAddition(inoculant!.Composition(RecoveryStage.Bath), recipe!.InoculantRatePercent!.Value)]);
    }

    private static PlannedTreatment? Treatment(ChargeView data, GradeView grade, ChargeChoice choice, FieldCheck fields)
    {
        var alloy = Material(data, grade.Recipe?.TreatmentAlloyCode);
        var ladle = data.Ladles.FirstOrDefault(l => l.Id == choice.LadleId);
        var sulphur = choice.Limits?.FirstOrDefault(limit => limit.Quantity == Element.S.Symbol)?.Most
            ?? grade.At(WindowStage.Furnace).FirstOrDefault(row => row.Quantity == Element.S.Symbol)?.Most;
        if (alloy is null) fields.Add("target", "recipe.noAlloy", grade.Code);
        if (ladle is null) fields.Add("ladleId", "choice.missing");
        if (sulphur is null) fields.Add("target", "recipe.noSulphur", grade.Code);
        var cover = Material(data, grade.Recipe?.CoverCode);
        if (cover is null && grade.Recipe?.CoverCode is not null) fields.Add("target", "recipe.noCover", grade.Code);
        if (grade.Recipe is not { TargetMgPercent: { } magnesium, SulphurLeftPercent: { } left, MinutesToLastMould: { } minutes })
        {
            fields.Add("target", "recipe.noTreatment", grade.Code);
            return null;
        }

        if (alloy is null || ladle is null || sulphur is null) return null;
        var composition = alloy.Composition(RecoveryStage.Bath);
        var recipe = new TreatmentRecipe
        {
            // Magnesium has the recovery of the ladle, whatever the yard says of the alloy in a charge.
            Alloy = composition with { RecoveryPercent = composition.RecoveryPercent.Where(r => r.Key != Element.Mg).ToDictionary() },
            MgRecoveryPercent = ladle.MgRecoveryPercent,
            Fade = new Fade.Linear(ladle.MgFadePercentPerMinute),
            SulphurLeftPercent = left,
        };
        // The recovery is the one that was found at its own temperature; nothing else here depends on it.
        return new(recipe, ladle.RecoveryTemperatureC ?? FieldCheck.LowestC, magnesium, minutes, sulphur.Value,
            cover is null ? null : new RouteAddition(cover.Composition(RecoveryStage.Bath), grade.Recipe.CoverRatePercent!.Value));
    }

    private static MaterialView? Material(ChargeView data, string? code) =>
        data.RouteMaterials.FirstOrDefault(material => material.Code == code) is { Analysis: not null, MetallicYieldPercent: not null } material ? material : null;
}
