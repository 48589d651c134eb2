using MeltShop.Records.Laboratory;

namespace MeltShop.Operations.Importing.Maps;

/// <summary>How the files of one instrument are to be read: made once by pointing at a sample file, kept by name.</summary>
/// <remarks>The decimal sign, the form of the instants and the separator hold for the whole file: no cell is guessed at.</remarks>
public sealed record ColumnMap
{
    /// <summary>The instrument, as the samples name it; with the sender's own number it says which sample a row is.</summary>
    public required string Instrument { get; init; }

    public required RowLayout Layout { get; init; }
    public required DecimalSign DecimalSign { get; init; }

    /// <summary>Between two cells of a text file: one sign, or a tab.</summary>
    public required char Separator { get; init; }

    public TextCoding Coding { get; init; } = TextCoding.Utf8;

    /// <summary>
    /// Form of the instants in a text, for example <c>dd.MM.yyyy HH:mm:ss</c> (the framework's custom format strings, invariant culture);
    /// without an offset they are meant in the site's time zone.
    /// </summary>
    public required string TimeForm { get; init; }

    /// <summary>The line that holds the headings, from 1; what stands before it is passed over. 0: there are none.</summary>
    public int HeadingLine { get; init; } = 1;

    /// <summary>Texts, parted by blanks, that stand in a cell of an element that was not measured; an empty cell always says so.</summary>
    public string NotMeasuredTexts { get; init; } = "";

    /// <summary>What a sample is where no column says it.</summary>
    public SampleKind? UsualKind { get; init; }

    /// <summary>How the file calls the kinds of samples, where a column says it.</summary>
    public IReadOnlyList<KindText> KindTexts { get; init; } = [];

    /// <summary>How the file says that a coin broke grey, where a column tells the fracture; upper and lower case are the same.</summary>
    public string GreyText { get; init; } = "";

    /// <summary>How it says that one broke white; an empty cell always says so.</summary>
    public string WhiteText { get; init; } = "";

    /// <summary>The columns that are read; all others are passed over.</summary>
    public required IReadOnlyList<MappedColumn> Columns { get; init; }
}

/// <summary>What a row of the file is.</summary>
public enum RowLayout
{
    BurnPerRow,

    /// <summary>The instrument sends only the mean: it is kept as one burn.</summary>
    MeanPerRow,
}

public enum DecimalSign
{
    Point,
    Comma,
}

/// <summary>How a text file's bytes are read; a byte-order mark goes before it.</summary>
public enum TextCoding
{
    Utf8,

    /// <summary>Windows code page 1252, as older instruments write.</summary>
    Western,
}

/// <param name="Text">In the file; upper and lower case are the same.</param>
/// <param name="Kind">What it means.</param>
public sealed record KindText(string Text, SampleKind Kind);
