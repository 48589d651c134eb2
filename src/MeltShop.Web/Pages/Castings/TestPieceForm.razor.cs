using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Castings;
using MeltShop.Records.Castings;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Castings;

/// <summary>Names a test piece.</summary>
public sealed partial class TestPieceForm
{
    private readonly EntryForm form = new();
    private readonly TextEntry label;
    private readonly TextEntry shape;
    private readonly TextEntry sampleType;
    private readonly QuantityEntry wallMm;
    private readonly TextEntry testUnit;

    public TestPieceForm()
    {
        (label, shape, sampleType) = (form.Words("label", isRequired: true), form.Choice("shape", isRequired: true), form.Choice("sampleType", isRequired: true));
        (wallMm, testUnit) = (form.Quantity("wallMm", 1, 1000, isRequired: true), form.Words("testUnit", isRequired: true));
        shape.Showing(nameof(TestPieceShape.CastOn));
        sampleType.Showing(nameof(SampleType.CastSample));
    }

    [Parameter, EditorRequired]
    public long TreatedLadleId { get; set; }

    [Inject]
    private RecordTestPiece Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private IEnumerable<Choice> Shapes => Enum.GetNames<TestPieceShape>().Select(name => new Choice(name, Text["Shape." + name]));

    private IEnumerable<Choice> SampleTypes => Enum.GetNames<SampleType>().Select(name => new Choice(name, Text["SampleType." + name]));

    private async Task Save()
    {
        if (form.IsAccepted) form.Open();
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, TreatedLadleId, label.Text, Enum.Parse<TestPieceShape>(shape.Text), Enum.Parse<SampleType>(sampleType.Text), wallMm.Needed, testUnit.Text)));
        if (outcome?.Succeeded == true) label.Showing(null);
    }
}
