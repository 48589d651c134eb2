using MeltShop.Operations.Sites;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Sites;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>How warm the ladle is, as somebody sees it now, and how long ago it was used.</summary>
public sealed partial class LadleStanding
{
    private readonly EntryForm form = new();

    [Parameter, EditorRequired]
    public LadleEquipment Ladle { get; set; } = null!;

    [Parameter, EditorRequired]
    public DateTimeOffset Now { get; set; }

    /// <summary>False where its name is the heading above.</summary>
    [Parameter]
    public bool IsNamed { get; set; } = true;

    /// <summary>After somebody said how warm it is.</summary>
    [Parameter]
    public EventCallback Seen { get; set; }

    [Inject]
    private SeePreheat Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private async Task Say(LadlePreheat preheat)
    {
        form.Open();
        await HandingIn.Send(form, made => Operation.Run(made.By, new(made.Key, made.ObservedAt, Ladle.Id, preheat, null)));
        await Seen.InvokeAsync();
    }
}
