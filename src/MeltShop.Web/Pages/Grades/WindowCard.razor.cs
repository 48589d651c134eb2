using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Limits;
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

    /// <summary>With its unit where that is not the percent of the table.</summary>
    private string Name(string quantity) => QuantityText.Unit(quantity) is { Length: > 0 } unit and not "%" ? $"{QuantityText.Name(LimitText, quantity)}, {unit}" : QuantityText.Name(LimitText, quantity);

    private static string Margin(WindowView window) => QuantityText.Dimension(window.Quantity) == Dimension.Temperature
        ? NumberText.Show(ShopUnits.Current.TemperatureDifference.Readable(window.Margin))
        : QuantityText.Bound(window.Quantity, window.Margin);

    private void Open(string quantity) => (opened, isSaved) = (quantity, false);

    private void Close() => (opened, isSaved) = (null, true);

    private void Leave() => opened = null;
}
