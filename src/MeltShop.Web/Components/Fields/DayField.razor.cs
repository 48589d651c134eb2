using System.Globalization;
using MeltShop.Web.Components.Reading;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Fields;

/// <summary>
/// A day by the device's own calendar; its text is <c>2026-03-31</c>, whatever the device shows. What the device shows is in its own language, not the
/// person's, and 03/04 is two days: the day is said below as it is said everywhere.
/// </summary>
public sealed partial class DayField
{
    /// <summary>Written into the markup, the binding would make a date of the text and drop one that is none.</summary>
    private const string Kind = "date";

    private readonly string id = FieldFrame.NewId();

    [Parameter, EditorRequired]
    public TextEntry Entry { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    [Parameter]
    public string? Help { get; set; }

    [Parameter]
    public EventCallback Changed { get; set; }

    private string? Note => DateOnly.TryParseExact(Entry.Text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
        ? string.Join(" · ", new[] { Text["Read", ShopSite.Day(day)].Value, Help }.OfType<string>()) : Help;

    private Task Choose(string? chosen)
    {
        Entry.Text = chosen ?? "";
        return Changed.InvokeAsync();
    }
}
