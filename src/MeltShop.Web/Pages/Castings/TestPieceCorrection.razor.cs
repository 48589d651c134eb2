using MeltShop.Operations.Castings;
using MeltShop.Records.Castings;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Castings;

/// <summary>Puts a test piece right, or takes it out, with a reason; the results go with it.</summary>
public sealed partial class TestPieceCorrection
{
    private TestPieceDraft? draft;
    private TextEntry? withdrawn;
    private TextEntry? reason;

    [Parameter, EditorRequired]
    public TestPiece Piece { get; set; } = null!;

    [Parameter]
    public IReadOnlyList<string> Moulds { get; set; } = [];

    [Inject]
    private CorrectTestPiece Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private IEnumerable<Choice> Wrongs => [new(bool.FalseString, Text["PieceIsOther"]), new(bool.TrueString, Text["PieceIsNone"])];

    private void Open()
    {
        draft = new();
        draft.Fill(Piece);
        withdrawn = draft.Form.Choice("isWithdrawn", isRequired: true).Showing(bool.FalseString);
        reason = draft.Form.Words("reason", isRequired: true);
    }

    private async Task Save()
    {
        var outcome = await HandingIn.Send(draft!.Form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, Piece.Id, draft.Label.Text, draft.ChosenShape, draft.ChosenType, draft.WallMm.Needed, draft.TestUnit.Text,
            bool.Parse(withdrawn!.Text), reason!.Text)
        {
            Moulds = [.. draft.Moulds],
        }));
        if (outcome?.Succeeded == true) draft = null;
    }
}
