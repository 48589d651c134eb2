using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Castings;
using MeltShop.Records.Castings;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Castings;

/// <summary>What a test piece is, as it is typed.</summary>
public sealed class TestPieceDraft
{
    public TestPieceDraft()
    {
        (Label, Shape, SampleType) = (Form.Words("label", isRequired: true), Form.Choice("shape", isRequired: true), Form.Choice("sampleType", isRequired: true));
        (WallMm, TestUnit) = (Form.Quantity("wallMm", 1, 1000, isRequired: true), Form.Words("testUnit", isRequired: true));
        Shape.Showing(nameof(TestPieceShape.CastOn));
        SampleType.Showing(nameof(Metallurgy.Grades.SampleType.CastSample));
    }

    public EntryForm Form { get; } = new();
    public TextEntry Label { get; }
    public TextEntry Shape { get; }
    public TextEntry SampleType { get; }
    public QuantityEntry WallMm { get; }
    public TextEntry TestUnit { get; }

    /// <summary>Labels of the moulds that were ticked.</summary>
    public HashSet<string> Moulds { get; } = [];

    public TestPieceShape ChosenShape => Enum.Parse<TestPieceShape>(Shape.Text);

    public SampleType ChosenType => Enum.Parse<SampleType>(SampleType.Text);

    /// <summary>What stands there now.</summary>
    public void Fill(TestPiece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        Label.Showing(piece.Label);
        Shape.Showing(piece.Shape.ToString());
        SampleType.Showing(piece.SampleType.ToString());
        WallMm.Showing(piece.WallMm);
        TestUnit.Showing(piece.TestUnit);
        Moulds.UnionWith(CastingUnits.Moulds(piece.Moulds));
    }

    /// <summary>As the box says: it may be told twice.</summary>
    public void Tick(string mould, bool isTicked)
    {
        if (isTicked) Moulds.Add(mould);
        else Moulds.Remove(mould);
    }
}
