using MeltShop.Operations.Drafts;
using MeltShop.Web.SignIn;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Entries;

/// <summary>Of a coin that fell apart, what anybody typed goes, after it was asked for: it cannot be brought back.</summary>
public sealed partial class ThrowAway
{
    private bool isAsking;

    /// <summary>Where the drafts lie.</summary>
    [Parameter, EditorRequired]
    public string Subject { get; set; } = "";

    /// <summary>After they went.</summary>
    [Parameter]
    public EventCallback Gone { get; set; }

    [Inject]
    private DropDrafts Dropping { get; set; } = null!;

    [Inject]
    private ActingPerson Person { get; set; } = null!;

    private async Task Throw()
    {
        await Dropping.Run(await Person.GetAsync(), Subject);
        isAsking = false;
        await Gone.InvokeAsync();
    }
}
