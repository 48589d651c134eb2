using MeltShop.Metallurgy;

namespace MeltShop.Operations.Importing.Files;

/// <summary>A row of a file as it stands there.</summary>
/// <param name="Line">From 1, as an editor or a spreadsheet counts.</param>
/// <param name="Cells">From the left.</param>
/// <param name="Text">The whole row, as a text file has it; of a workbook, its cells with tabs between.</param>
/// <param name="IsBroken">Quotation marks stand where none may: the cells cannot be trusted.</param>
public sealed record SheetRow(int Line, IReadOnlyList<Cell> Cells, string Text, bool IsBroken = false);

/// <param name="Text">Letter by letter; of a number in a workbook, its shortest exact form with a point.</param>
/// <param name="Value">In a workbook a <c>double</c> or a <c>DateTime</c>, where the cell holds one; else null.</param>
public readonly record struct Cell(string Text, object? Value = null)
{
    public bool IsEmpty => string.IsNullOrWhiteSpace(Text);
}

/// <summary>A file that cannot be read on; caught where reading began and answered as a finding.</summary>
#pragma warning disable CA1032, CA1064 // never leaves this room
internal sealed class SheetFault(Finding finding) : Exception
#pragma warning restore CA1032, CA1064
{
    public Finding Finding => finding;

    public static SheetFault Of(string code, params object[] arguments) => new(new Finding("file", code, arguments));
}
