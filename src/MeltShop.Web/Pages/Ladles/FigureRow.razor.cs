using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Sites;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>One figure of a ladle: its value, its band, how sure it is and where it comes from.</summary>
public sealed partial class FigureRow
{
    private const string None = "–";

    [Parameter, EditorRequired]
    public LadleFigureKind Kind { get; set; }

    /// <summary>Null where nobody said.</summary>
    [Parameter]
    public LadleFigureView? Figure { get; set; }

    private string Shown => Figure is null ? None : UnitText.Of(Number(Figure.Value), FigureUnits.Of(Kind));

    private string Band => Figure is { Least: null, Most: null } or null ? None : $"{Number(Figure.Least)} … {Number(Figure.Most)}";

    private string Number(double? value) => value is { } number ? NumberText.Show(FigureUnits.Shown(Kind, number)) : "";
}
