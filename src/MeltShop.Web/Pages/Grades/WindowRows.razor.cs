using MeltShop.Records.Grades;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Grades;

/// <summary>The window of a new grade at one stage, a row for each quantity.</summary>
public sealed partial class WindowRows
{
    [Parameter, EditorRequired]
    public EntryForm Form { get; set; } = null!;

    [Parameter, EditorRequired]
    public WindowStage Stage { get; set; }

    /// <summary>The rows, which come and go here.</summary>
    [Parameter, EditorRequired]
    public IList<WindowRow> Rows { get; set; } = [];

    private void Add() => Rows.Add(new WindowRow(Form, null));

    private void Remove(WindowRow row)
    {
        Rows.Remove(row);
        row.Leave();
    }
}
