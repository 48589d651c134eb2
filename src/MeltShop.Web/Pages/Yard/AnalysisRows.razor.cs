using MeltShop.Metallurgy;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Yard;

/// <summary>The elements of an analysis, a row each.</summary>
public sealed partial class AnalysisRows
{
    private AnalysisRow? fresh;

    [Parameter, EditorRequired]
    public EntryForm Form { get; set; } = null!;

    /// <summary>The rows, which come and go here.</summary>
    [Parameter, EditorRequired]
    public IList<AnalysisRow> Rows { get; set; } = [];

    /// <summary>What is said twice of one element.</summary>
    public static IEnumerable<Finding> Twice(IReadOnlyList<AnalysisRow> rows) => rows
        .Where((row, place) => rows.Take(place).Any(other => other.Symbol.Value == row.Symbol.Value))
        .Select(row => new Finding(row.Symbol.Path, "element.twice", row.Symbol.Value!));

    protected override void OnInitialized()
    {
        if (Rows.Count == 0) Rows.Add(new AnalysisRow(Form, null));
    }

    private void Add() => Rows.Add(fresh = new AnalysisRow(Form, null));

    private void Remove(AnalysisRow row)
    {
        Rows.Remove(row);
        row.Leave();
    }
}
