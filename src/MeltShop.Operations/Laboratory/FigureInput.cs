using MeltShop.Operations.Checking;
using MeltShop.Records.Laboratory;

namespace MeltShop.Operations.Laboratory;

/// <summary>One figure of a cup or a chill wedge, as it was typed or sent.</summary>
/// <param name="Value">°C or mm, as the quantity says.</param>
/// <param name="InstrumentText">What stood on the screen or in the file, letter by letter.</param>
public sealed record FigureInput(FigureQuantity Quantity, double Value, string InstrumentText);

/// <summary>What can be wrong with the figures of a cup or a chill wedge, whichever way they come.</summary>
public static class FigureInputs
{
    /// <summary>A wedge is not larger (common practice, no source).</summary>
    private const double LargestChillMm = 100;

    /// <summary>Each finding at <c>figures.QUANTITY</c>.</summary>
    public static void Check(SampleKind kind, IReadOnlyList<FigureInput> figures, FieldCheck fields)
    {
        if (SampleKinds.OfFigures.Contains(kind) && figures.Count == 0) fields.Add("figures", "sample.noFigures");
        foreach (var (figure, index) in figures.Select((figure, index) => (figure, index)))
        {
            var path = $"figures.{figure.Quantity}";
            fields.Choice(path, figure.Quantity);
            if (KindOf(figure.Quantity) != kind) fields.Add(path, "sample.otherFigures");
            if (figures.Take(index).Any(f => f.Quantity == figure.Quantity)) fields.Add(path, "figure.twice");
            fields.Text(path, figure.InstrumentText, 60);
            if (figure.Quantity != FigureQuantity.ChillMm) fields.Temperature(path, figure.Value);
            else if (fields.Number(path, figure.Value) && figure.Value is < 0 or > LargestChillMm) fields.Add(path, "figure.outOfRange", figure.Value, 0.0, LargestChillMm);
        }

        if (Of(FigureQuantity.EutecticLowC) > Of(FigureQuantity.EutecticHighC)) fields.Add($"figures.{FigureQuantity.EutecticHighC}", "figure.noRecalescence");

        double? Of(FigureQuantity quantity) => figures.FirstOrDefault(f => f.Quantity == quantity)?.Value;
    }

    internal static List<SampleFigure> Rows(IEnumerable<FigureInput> figures) =>
        [.. figures.Select(f => new SampleFigure { Quantity = f.Quantity, Value = f.Value, InstrumentText = f.InstrumentText })];

    private static SampleKind KindOf(FigureQuantity quantity) => quantity == FigureQuantity.ChillMm ? SampleKind.ChillWedge : SampleKind.Cup;
}
