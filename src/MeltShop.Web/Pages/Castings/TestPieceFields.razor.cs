using MeltShop.Metallurgy.Grades;
using MeltShop.Records.Castings;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Castings;

/// <summary>The fields of a test piece.</summary>
public sealed partial class TestPieceFields
{
    [Parameter, EditorRequired]
    public TestPieceDraft Draft { get; set; } = null!;

    /// <summary>Labels of the moulds of the ladle.</summary>
    [Parameter]
    public IReadOnlyList<string> Moulds { get; set; } = [];

    /// <summary>A press opened the form that these begin: the keyboard goes on here.</summary>
    [Parameter]
    public bool TakesFocus { get; set; }

    private IEnumerable<Choice> Shapes => Enum.GetNames<TestPieceShape>().Select(name => new Choice(name, Text["Shape." + name]));

    private IEnumerable<Choice> SampleTypes => Enum.GetNames<SampleType>().Select(name => new Choice(name, Text["SampleType." + name]));
}
