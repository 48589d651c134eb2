using MeltShop.Metallurgy.Quantities;
using MeltShop.Metallurgy.Route;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Grades;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;

namespace MeltShop.Operations.Charging;

/// <summary>Derived quantities that a person limits for one charge, where the grade sets no limit.</summary>
public static class AddedLimits
{
    /// <summary>Those that mean something for a grade and the iron that is planned for.</summary>
    public static IEnumerable<WindowQuantity> Derived(GradeView grade, ChargeTarget target)
    {
        ArgumentNullException.ThrowIfNull(grade);
        return WindowQuantity.Derived.Where(quantity => Wrong(quantity, grade, target) is null);
    }

    /// <summary>Whether an added limit speaks of the iron in the mould: what is found from the iron as poured does, all else of the furnace iron.</summary>
    public static bool IsOfThePoured(string quantity) => WindowQuantity.Find(quantity)?.Iron is IronState.Poured;

    internal static void CheckAdded(this FieldCheck fields, GradeView grade, ChargeChoice choice)
    {
        foreach (var limit in Added(grade, choice))
        {
            if (WindowQuantity.Find(limit.Quantity) is { } quantity && Wrong(quantity, grade, choice.Target) is { } code) fields.Add($"limits.{limit.Quantity}.most", code, limit.Quantity);
        }
    }

    /// <summary>Those of the poured iron as windows of it, to be turned back with the grade's own.</summary>
    internal static IEnumerable<TargetRow> Poured(GradeView grade, ChargeChoice choice, FieldCheck fields) => Added(grade, choice)
        .Where(limit => IsOfThePoured(limit.Quantity) && ChargeLimits.Check(limit.Quantity, limit.Least, limit.Most, fields) && fields.Findings.Count == 0)
        .SelectMany(limit => TargetRow.Of(new WindowView(WindowStage.Poured, limit.Quantity, limit.Least, null, limit.Most, 0)))
        .Select(row => row with { IsAdded = true });

    private static IEnumerable<LimitChoice> Added(GradeView grade, ChargeChoice choice) =>
        (choice.Limits ?? []).Where(limit => grade.Windows.All(window => window.Quantity != limit.Quantity));

    private static string? Wrong(WindowQuantity quantity, GradeView grade, ChargeTarget target) => quantity.Iron is IronState.Poured && target is not ChargeTarget.Poured
        ? "quantity.pouredOnly"
        : GradeInputs.Unmeant("", quantity.Iron is IronState.Poured ? WindowStage.Poured : WindowStage.Furnace, quantity.Name, grade.Family)?.Code;
}
