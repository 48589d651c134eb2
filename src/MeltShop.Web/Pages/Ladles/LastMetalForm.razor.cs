using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Grades;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Grades;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Heats;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>A coin from the last metal of the ladle, in the grid of every sample.</summary>
public sealed partial class LastMetalForm
{
    private readonly EntryForm form = new();
    private readonly TextEntry coin;
    private readonly TextEntry remarks;
    private SampleDraft draft = null!;

    public LastMetalForm() => (coin, remarks) = (form.Words("coinNumber"), form.Words("remarks"));

    [Parameter, EditorRequired]
    public TreatedLadleView Treated { get; set; } = null!;

    [Parameter, EditorRequired]
    public GradeView Grade { get; set; } = null!;

    [Inject]
    private RecordSample Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    protected override void OnInitialized()
    {
        var limited = Grade.At(WindowStage.Poured).Select(window => Element.TryParse(window.Quantity, out var element) ? element : null).OfType<Element>();
        draft = new SampleDraft(form, limited.Union([Element.Si, Element.Mn, Element.P, Element.S, Element.Mg]).Order());
    }

    private async Task Save()
    {
        await HandingIn.Send(
            form,
            made => Operation.Run(made.By, new(
                made.Key, made.ObservedAt, Treated.HeatId, Treated.Id, SampleKind.LastMetal, draft.Inputs(), coin.Value, remarks.Value)),
            draft.Check);
    }
}
