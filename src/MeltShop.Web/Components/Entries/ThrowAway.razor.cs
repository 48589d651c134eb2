using MeltShop.Operations.Drafts;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Entries;

/// <summary>Of a coin that fell apart, what anybody typed goes, after it was asked for: it cannot be brought back.</summary>
public sealed partial class ThrowAway
{
    private EntryForm? form;
    private ElementReference keep;
    private bool isFresh;

    /// <summary>Where the drafts lie.</summary>
    [Parameter, EditorRequired]
    public string Subject { get; set; } = "";

    /// <summary>After they went.</summary>
    [Parameter]
    public EventCallback Gone { get; set; }

    [Inject]
    private DropDrafts Dropping { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    /// <summary>The press that asked is gone: the keyboard goes on at the answer that loses nothing.</summary>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!isFresh) return;
        isFresh = false;
        await keep.FocusAsync();
    }

    private void Ask() => (form, isFresh) = (new(), true);

    private async Task Throw()
    {
        if (await HandingIn.Send(form!, made => Dropping.Run(made.By, Subject)) is not { Succeeded: true }) return;
        form = null;
        await Gone.InvokeAsync();
    }
}
