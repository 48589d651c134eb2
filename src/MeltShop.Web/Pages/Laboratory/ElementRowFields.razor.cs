using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Laboratory;

/// <summary>The fields of rows of elements.</summary>
public sealed partial class ElementRowFields
{
    [Parameter, EditorRequired]
    public ElementRows Rows { get; set; } = null!;

    /// <summary>What the first figure is.</summary>
    [Parameter, EditorRequired]
    public string First { get; set; } = "";

    [Parameter, EditorRequired]
    public string Second { get; set; } = "";

    [Parameter]
    public string SecondUnit { get; set; } = "%";

    private void Add() => Rows.Add();

    private void Remove(ElementRow row) => Rows.Remove(row);
}
