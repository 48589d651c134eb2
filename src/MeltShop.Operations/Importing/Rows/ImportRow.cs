using MeltShop.Operations.Laboratory;
using MeltShop.Records.Laboratory;

namespace MeltShop.Operations.Importing.Rows;

/// <summary>Whose sample a row is of, as the file says.</summary>
/// <param name="Number">The sender's own number of the sample.</param>
/// <param name="Heat">Number of the heat.</param>
/// <param name="Furnace">Code of the furnace.</param>
/// <param name="Ladle">Code of the ladle.</param>
public sealed record RowSubject(string? Number, string? Heat, string? Furnace, string? Ladle, SampleKind Kind, string? Coin)
{
    /// <summary>The coin broke grey.</summary>
    public bool IsGrey { get; init; }

    /// <summary>Code of the reference material on which the instrument was checked; null for a sample of a heat.</summary>
    public string? Reference { get; init; }
}

/// <summary>A row that can be read: a burn, a sample's mean, or a cup or wedge.</summary>
/// <param name="Line">In the file, from 1.</param>
/// <param name="Burn">Its number, or null where the file gives none.</param>
/// <param name="Text">The whole row as it stands in the file.</param>
public sealed record ImportRow(
    int Line, RowSubject Subject, DateTimeOffset TakenAt, int? Burn, string? Remarks, IReadOnlyList<ReadingInput> Readings, string Text)
{
    /// <summary>Of a cup or a chill wedge, which has no readings.</summary>
    public IReadOnlyList<FigureInput> Figures { get; init; } = [];
}

/// <summary>Why a row does not count.</summary>
/// <param name="Line">In the file, from 1.</param>
/// <param name="Column">The column's heading, or its place; empty where the whole row is meant.</param>
/// <param name="Text">What stands there.</param>
/// <param name="Code">The reason, with its arguments.</param>
public sealed record RowFault(int Line, string Column, string Text, string Code, params IReadOnlyList<object> Arguments);

/// <summary>The burns of one sample in their order, or the one row of a cup or wedge.</summary>
/// <param name="IsMeanOnly">The one row is the mean that the instrument sent.</param>
/// <param name="Rows">At least one.</param>
public sealed record ImportSample(RowSubject Subject, DateTimeOffset TakenAt, bool IsMeanOnly, IReadOnlyList<ImportRow> Rows)
{
    public int Line => Rows[0].Line;

    public IReadOnlyList<ImportRow> Burns => SampleKinds.OfFigures.Contains(Subject.Kind) ? [] : Rows;

    public IReadOnlyList<FigureInput> Figures => Rows[0].Figures;

    /// <summary>Its rows, letter by letter.</summary>
    public string Text => Rows.Count == 1 ? Rows[0].Text : string.Join('\n', Rows.Select(r => r.Text));

    public string? Remarks => Rows.Select(r => r.Remarks).FirstOrDefault(r => r is not null);
}
