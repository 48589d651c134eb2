using MeltShop.Operations.Sites;
using MeltShop.Records.Reading.Sites;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Shop;

/// <summary>What was said of the shop, and how it is put right.</summary>
public sealed partial class SiteCard
{
    private readonly EntryForm form = new();
    private readonly TextEntry name, timeZone, currency;
    private SetSite.Said seen = null!;
    private bool isOpen, isOutdated;

    public SiteCard() =>
        (name, timeZone, currency) = (form.Words("name", isRequired: true), form.Choice("timeZone", isRequired: true), form.Words("currency", isRequired: true));

    [Parameter, EditorRequired]
    public SiteView Site { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    /// <summary>After it was recorded, or somebody else was faster: the page has to read again.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private SetSite Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private SetSite.Said Standing => new(Site.Name, Site.TimeZone, Site.Currency);

    /// <summary>After a refusal because somebody else was faster, what the page shows now is what they see.</summary>
    protected override void OnParametersSet()
    {
        if (isOutdated && Standing != seen) (seen, isOutdated) = (Standing, false);
    }

    private void Open()
    {
        (isOpen, seen) = (true, Standing);
        form.Open();
        name.Showing(seen.Name);
        timeZone.Showing(seen.TimeZone);
        currency.Showing(seen.Currency);
    }

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(made.Key, made.ObservedAt, seen, new(name.Value!, timeZone.Value!, currency.Value!))));
        if (outcome is null) return;
        isOutdated = outcome.IsStale();
        if (outcome.Succeeded) isOpen = false;
        await Changed.InvokeAsync();
    }
}
