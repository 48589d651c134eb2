using MeltShop.Operations.Castings;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Castings;

/// <summary>Names a test piece.</summary>
public sealed partial class TestPieceForm
{
    private readonly TestPieceDraft draft = new();

    [Parameter, EditorRequired]
    public long TreatedLadleId { get; set; }

    [Parameter]
    public IReadOnlyList<string> Moulds { get; set; } = [];

    [Inject]
    private RecordTestPiece Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private async Task Save()
    {
        if (draft.Form.IsAccepted) draft.Form.Open();
        var outcome = await HandingIn.Send(draft.Form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, TreatedLadleId, draft.Label.Text, draft.ChosenShape, draft.ChosenType, draft.WallMm.Needed, draft.TestUnit.Text)
        {
            Moulds = [.. draft.Moulds],
        }));
        if (outcome?.Succeeded == true) draft.Label.Showing(null);
    }
}
