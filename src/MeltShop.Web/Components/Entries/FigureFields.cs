using MeltShop.Operations.Checking;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Laboratory;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Components.Entries;

/// <summary>The fields of what a cup or a chill wedge says.</summary>
public static class FigureFields
{
    /// <summary>Puts one for each figure on a form.</summary>
    public static IReadOnlyDictionary<FigureQuantity, QuantityEntry> On(EntryForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        return Enum.GetValues<FigureQuantity>().ToDictionary(
            quantity => quantity,
            quantity => quantity == FigureQuantity.ChillMm ? form.Quantity($"figures.{quantity}", 0, 100) : form.Temperature($"figures.{quantity}", FieldCheck.LowestC, FieldCheck.HighestC));
    }

    /// <summary>Those of a kind of sample.</summary>
    public static IEnumerable<KeyValuePair<FigureQuantity, QuantityEntry>> Of(this IReadOnlyDictionary<FigureQuantity, QuantityEntry> figures, SampleKind kind) =>
        SampleKinds.OfFigures.Contains(kind) ? figures.Where(figure => (figure.Key == FigureQuantity.ChillMm) == (kind == SampleKind.ChillWedge)) : [];

    /// <summary>What was read, an empty field was not.</summary>
    public static IReadOnlyList<FigureInput> Inputs(IEnumerable<KeyValuePair<FigureQuantity, QuantityEntry>> figures) =>
        [.. figures.Where(figure => figure.Value.Value is not null).Select(figure => new FigureInput(figure.Key, figure.Value.Needed, AsRead(figure.Value)))];

    /// <summary>Letter by letter; with its unit where that is not the one of the records.</summary>
    private static string AsRead(QuantityEntry figure) => figure.Unit.IsRecorded ? figure.Text.Trim() : $"{figure.Text.Trim()} {figure.Unit.Sign}";
}
