using MeltShop.Operations.Ladles;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>One large button at the end of the flare.</summary>
public sealed partial class ReactionForm
{
    private readonly EntryForm form = new();

    [Parameter, EditorRequired]
    public TreatedLadleView Treated { get; set; } = null!;

    [Inject]
    private EndReaction Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private async Task End() => await HandingIn.Send(form, made => Operation.Run(made.By, new(made.Key, made.ObservedAt, Treated.Id, Treated.Version)));
}
