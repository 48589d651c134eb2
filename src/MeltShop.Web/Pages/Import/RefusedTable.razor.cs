using MeltShop.Operations.Importing.Rows;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Import;

/// <summary>Each refused row with its reasons; a long list part by part.</summary>
public sealed partial class RefusedTable
{
    private const int Part = 200;

    [Parameter, EditorRequired]
    public IReadOnlyList<RowFault> Faults { get; set; } = [];

    /// <summary>Rows that were refused in all, where a file keeps the reasons of the first of them only; null where all are here.</summary>
    [Parameter]
    public int? Rows { get; set; }

    private int Kept => Faults.Select(fault => fault.Line).Distinct().Count();

    private int Shown { get; set; } = Part;

    private void More() => Shown += Part;
}
