using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Grades;

/// <summary>The window of a grade at one stage; a row is changed in its place.</summary>
public sealed partial class WindowCard
{
    /// <summary>The quantity whose row is being changed; empty for a new one, null for none.</summary>
    private string? opened;
    private bool isSaved;

    [Parameter, EditorRequired]
    public GradeView Grade { get; set; } = null!;

    [Parameter, EditorRequired]
    public WindowStage Stage { get; set; }

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    /// <summary>The grade is another now: the page has to read again.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    private List<WindowView> Windows => [.. Grade.At(Stage)];

    private static string Shown(WindowView window, double? value) => value is { } number
        ? NumberText.ShowAtLeast(number, Element.TryParse(window.Quantity, out var element) ? element.Decimals : 2)
        : "–";

    private void Open(string quantity) => (opened, isSaved) = (quantity, false);

    private void Close() => (opened, isSaved) = (null, true);

    private void Leave() => opened = null;
}
