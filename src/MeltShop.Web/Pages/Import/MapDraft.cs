using System.Globalization;
using MeltShop.Metallurgy;
using MeltShop.Operations.Importing.Files;
using MeltShop.Operations.Importing.Maps;
using MeltShop.Records.Laboratory;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Import;

/// <summary>A column map while it is being made.</summary>
public sealed class MapDraft(EntryForm form)
{
    public static IReadOnlyDictionary<string, char> Separators { get; } = new Dictionary<string, char> { ["semicolon"] = ';', ["comma"] = ',', ["tab"] = '\t', ["bar"] = '|' };

    public TextEntry Name { get; } = form.Words("name", isRequired: true);
    public TextEntry Instrument { get; } = form.Choice("instrument", isRequired: true);
    public TextEntry Layout { get; } = form.Choice("layout", isRequired: true);
    public TextEntry DecimalSign { get; } = form.Choice("decimalSign", isRequired: true);
    public TextEntry Separator { get; } = form.Choice("separator", isRequired: true);
    public TextEntry Coding { get; } = form.Choice("coding", isRequired: true).With(nameof(Operations.Importing.Maps.TextCoding.Utf8));
    public TextEntry HeadingLine { get; } = form.Words("headingLine", isRequired: true).With("1");
    public TextEntry TimeForm { get; } = form.Words("timeForm", isRequired: true).With(TimeForms.Usual[0]);
    public TextEntry NotMeasured { get; } = form.Words("notMeasuredTexts");
    public TextEntry UsualKind { get; } = form.Choice("usualKind");
    public TextEntry GreyText { get; } = form.Words("greyText");
    public TextEntry WhiteText { get; } = form.Words("whiteText");

    /// <summary>Words of the file are said or asked for: they are shown unasked.</summary>
    public bool HasWords => KindTexts.Select(kind => kind.Text).Append(GreyText).Append(WhiteText).Any(text => text.Value is not null || text.Finding is not null);

    public IReadOnlyList<KindWords> KindTexts { get; } = [.. Enum.GetValues<SampleKind>().Select(kind => new KindWords(kind, form.Words($"kindTexts.{kind}")))];
    public IReadOnlyList<ColumnDraft> Columns { get; private set; } = [];

    public char SeparatorSign => Separators.GetValueOrDefault(Separator.Value ?? "", ';');

    public TextCoding TextCoding => Enum.TryParse<TextCoding>(Coding.Value, out var coding) ? coding : default;

    /// <summary>Null where it is no whole number.</summary>
    public int? HeadingNumber => int.TryParse(HeadingLine.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var line) ? line : null;

    public void Suggest(char separator) => Separator.Showing(Separators.First(s => s.Value == separator).Key);

    /// <summary>A map as it is kept, to be changed.</summary>
    public void Show(string name, ColumnMap map)
    {
        ArgumentNullException.ThrowIfNull(map);
        foreach (var column in Columns) column.Leave(form);
        Name.Showing(name);
        Instrument.Showing(map.Instrument);
        Layout.Showing(map.Layout.ToString());
        DecimalSign.Showing(map.DecimalSign.ToString());
        Separator.Showing(Separators.FirstOrDefault(s => s.Value == map.Separator).Key);
        Coding.Showing(map.Coding.ToString());
        HeadingLine.Showing(map.HeadingLine.ToString(CultureInfo.InvariantCulture));
        TimeForm.Showing(map.TimeForm);
        NotMeasured.Showing(map.NotMeasuredTexts);
        UsualKind.Showing(map.UsualKind?.ToString());
        GreyText.Showing(map.GreyText);
        WhiteText.Showing(map.WhiteText);
        foreach (var kind in KindTexts) kind.Text.Showing(map.KindTexts.FirstOrDefault(k => k.Kind == kind.Kind)?.Text);
        Columns = [.. map.Columns.OrderBy(c => c.Place).Select(c => new ColumnDraft(form, c))];
    }

    /// <summary>The columns of a file with their headings and the first of what stands under them.</summary>
    public void Show(IReadOnlyList<SheetRow> rows, int headingLine)
    {
        var said = Columns.Where(c => c.Holds.Value is not null).GroupBy(c => c.Heading).ToDictionary(g => g.Key, g => g.First());
        foreach (var column in Columns) column.Leave(form);
        var headings = rows.FirstOrDefault(r => r.Line == headingLine)?.Cells ?? [];
        var under = rows.Where(r => r.Line > headingLine).ToList();
        var width = rows.Count == 0 ? 0 : rows.Max(r => r.Cells.Count);
        Columns =
        [
            .. Enumerable.Range(0, width).Select(place => new ColumnDraft(
                form, place, place < headings.Count ? headings[place].Text.Trim() : "", [.. under.Where(r => place < r.Cells.Count).Select(r => r.Cells[place].Text).Take(3)], said)),
        ];
    }

    /// <summary>What the form itself can say.</summary>
    public IEnumerable<Finding> Check() => HeadingNumber is null ? [new Finding("headingLine", "importMap.headingLine")] : [];

    public ColumnMap Map() => new()
    {
        Instrument = Instrument.Value!,
        Layout = Enum.Parse<RowLayout>(Layout.Value!),
        DecimalSign = Enum.Parse<DecimalSign>(DecimalSign.Value!),
        Separator = SeparatorSign,
        Coding = TextCoding,
        TimeForm = TimeForm.Value!,
        HeadingLine = HeadingNumber!.Value,
        NotMeasuredTexts = NotMeasured.Value ?? "",
        UsualKind = Enum.TryParse<SampleKind>(UsualKind.Value, out var kind) ? kind : null,
        KindTexts = [.. KindTexts.Where(k => k.Text.Value is not null).Select(k => new KindText(k.Text.Value!.Trim(), k.Kind))],
        GreyText = GreyText.Value?.Trim() ?? "",
        WhiteText = WhiteText.Value?.Trim() ?? "",
        Columns = [.. Columns.Select(c => c.Column).OfType<MappedColumn>()],
    };
}

/// <summary>How the file calls a kind of sample.</summary>
public sealed record KindWords(SampleKind Kind, TextEntry Text);

internal static class TextEntries
{
    /// <summary>Shows a value from the start.</summary>
    public static TextEntry With(this TextEntry entry, string value)
    {
        entry.Showing(value);
        return entry;
    }
}
