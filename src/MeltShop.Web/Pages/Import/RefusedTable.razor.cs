using MeltShop.Operations.Importing.Rows;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Import;

/// <summary>Each refused row with its reasons; a long list part by part.</summary>
public sealed partial class RefusedTable
{
    private const int Part = 200;

    [Parameter, EditorRequired]
    public IReadOnlyList<RowFault> Faults { get; set; } = [];

    private int Shown { get; set; } = Part;

    private void More() => Shown += Part;
}
