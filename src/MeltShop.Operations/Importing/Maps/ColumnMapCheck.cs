using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
using MeltShop.Records.Laboratory;

namespace MeltShop.Operations.Importing.Maps;

/// <summary>What forbids a column map, each finding at its field.</summary>
public static class ColumnMapCheck
{
    private static readonly ColumnRole[] Once =
    [
        ColumnRole.SampleNumber, ColumnRole.Heat, ColumnRole.Furnace, ColumnRole.Ladle, ColumnRole.Kind, ColumnRole.Coin, ColumnRole.Burn,
        ColumnRole.Remarks, ColumnRole.Fracture, ColumnRole.Reference,
    ];

    public static void Check(ColumnMap map, FieldCheck fields)
    {
        fields.Text("instrument", map.Instrument, 60);
        fields.Choice("layout", map.Layout);
        fields.Choice("decimalSign", map.DecimalSign);
        fields.Choice("coding", map.Coding);
        fields.Text("timeForm", map.TimeForm, 60);
        if (!TimeForms.TellsAMinute(map.TimeForm)) fields.Add("timeForm", "importMap.timeForm");
        if (map.Separator is '"' or '\r' or '\n' or '\0' or '.' || char.IsLetterOrDigit(map.Separator)) fields.Add("separator", "importMap.separator");
        if (map.Separator == ',' && map.DecimalSign == DecimalSign.Comma) fields.Add("separator", "importMap.commaTwice");
        if (map.HeadingLine is < 0 or > 1000) fields.Add("headingLine", "importMap.headingLine");
        if (map.UsualKind is { } kind) fields.Choice("usualKind", kind);
        Roles(map, fields);
        Elements(map, fields);
        Figures(map, fields);
        Kinds(map, fields);
    }

    private static void Roles(ColumnMap map, FieldCheck fields)
    {
        bool Has(ColumnRole role) => map.Columns.Any(c => c.Role == role);
        foreach (var column in map.Columns)
        {
            fields.Choice($"columns[{column.Place}]", column.Role);
            if (column.Place is < 0 or >= Files.FileBounds.MostColumns) fields.Add($"columns[{column.Place}]", "importMap.place");
        }

        foreach (var column in map.Columns.GroupBy(c => c.Place).Where(g => g.Count() > 1)) fields.Add($"columns[{column.Key}]", "importMap.placeTwice");
        foreach (var column in map.Columns.Where(c => Once.Contains(c.Role)).GroupBy(c => c.Role).SelectMany(g => g.Skip(1)))
            fields.Add($"columns[{column.Place}]", "importMap.roleTwice");
        // A file of nothing but checks of the instrument names no heat, and no kind.
        var isOfHeats = Has(ColumnRole.Heat) || Has(ColumnRole.Furnace);
        if (!isOfHeats && !Has(ColumnRole.Reference)) fields.Add("columns", "importMap.noHeat");
        if (!Has(ColumnRole.TakenAt)) fields.Add("columns", "importMap.noTime");
        if (isOfHeats && !Has(ColumnRole.SampleNumber) && !Has(ColumnRole.Coin)) fields.Add("columns", "importMap.noNumber");
        if (isOfHeats && !Has(ColumnRole.Kind) && map.UsualKind is null) fields.Add("usualKind", "importMap.noKind");
        if (!Has(ColumnRole.Fracture)) return;
        fields.Text("greyText", map.GreyText, 60);
        fields.OptionalText("whiteText", map.WhiteText, 60);
        if (map.GreyText.Length > 0 && string.Equals(map.GreyText, map.WhiteText, StringComparison.OrdinalIgnoreCase)) fields.Add("whiteText", "importMap.fractureTwice");
    }

    private static void Elements(ColumnMap map, FieldCheck fields)
    {
        var columns = map.Columns.Where(c => c.Role == ColumnRole.Element).ToList();
        if (columns.Count == 0 && map.Columns.All(c => c.Role != ColumnRole.Figure)) fields.Add("columns", "importMap.noElement");
        foreach (var column in columns)
        {
            fields.Choice($"columns[{column.Place}]", column.Unit);
            if (!Element.TryParse(column.Element, out var element)) fields.Add($"columns[{column.Place}]", "element.unknown", column.Element ?? "");
            else if (element == Element.Fe) fields.Add($"columns[{column.Place}]", "analysis.iron");
        }

        foreach (var column in columns.GroupBy(c => c.Element).SelectMany(g => g.Skip(1)))
            fields.Add($"columns[{column.Place}]", "element.twice", column.Element ?? "");
    }

    private static void Figures(ColumnMap map, FieldCheck fields)
    {
        var columns = map.Columns.Where(c => c.Role == ColumnRole.Figure).ToList();
        foreach (var column in columns) fields.Choice($"columns[{column.Place}]", column.Figure ?? (FigureQuantity)(-1));
        foreach (var column in columns.GroupBy(c => c.Figure).SelectMany(g => g.Skip(1))) fields.Add($"columns[{column.Place}]", "figure.twice");
        if (columns.Count > 0) return;
        if (map.UsualKind is { } usual && SampleKinds.OfFigures.Contains(usual)) fields.Add("usualKind", "importMap.figures");
        if (map.KindTexts.Any(k => SampleKinds.OfFigures.Contains(k.Kind))) fields.Add("kindTexts", "importMap.figures");
    }

    private static void Kinds(ColumnMap map, FieldCheck fields)
    {
        foreach (var text in map.KindTexts)
        {
            fields.Text("kindTexts", text.Text, 60);
            fields.Choice("kindTexts", text.Kind);
        }

        foreach (var twice in map.KindTexts.GroupBy(k => k.Text, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1))
            fields.Add("kindTexts", "importMap.kindTwice", twice.Key);
    }
}
