using MeltShop.Metallurgy.Elements;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Grades;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Grades;

/// <summary>How iron of the grade is treated and inoculated unless a ladle says otherwise.</summary>
public sealed partial class RecipeCard
{
    private bool isOpen;
    private IReadOnlyDictionary<string, string> names = new Dictionary<string, string>();

    [Parameter, EditorRequired]
    public GradeView Grade { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    /// <summary>The grade is another now: the page has to read again.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private ChargePage Materials { get; set; } = null!;

    protected override async Task OnParametersSetAsync() => names = await Materials.MaterialNames();

    private bool IsDuctile => Grade.Family is IronFamily.Ductile;

    private string NameOf(string? code) => code is null ? Text["NotGiven"] : names.GetValueOrDefault(code, code);

    private string Percent(double? value, Element element) => value is { } number ? UnitText.Percent(NumberText.ShowAtLeast(number, element.Decimals)) : Text["NotGiven"];

    private string Shown(double? value, string unit) => value is { } number ? UnitText.Of(NumberText.Show(number), unit) : Text["NotGiven"];

    private void Close() => isOpen = false;
}
