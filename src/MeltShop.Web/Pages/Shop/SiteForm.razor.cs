using MeltShop.Operations.Sites;
using MeltShop.Records.Sites;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Shop;

/// <summary>Names the shop, with its zone, its currency and its units; nothing of it is taken for granted.</summary>
public sealed partial class SiteForm
{
    private readonly EntryForm form = new();
    private readonly TextEntry name, code, timeZone, currency, mass, temperature;

    public SiteForm()
    {
        (name, code) = (form.Words("name", isRequired: true), form.Words("code", isRequired: true));
        (timeZone, currency) = (form.Choice("timeZone", isRequired: true), form.Words("currency", isRequired: true));
        (mass, temperature) = (form.Choice("mass", isRequired: true), form.Choice("temperature", isRequired: true));
    }

    /// <summary>After it was recorded.</summary>
    [Parameter]
    public EventCallback SetUp { get; set; }

    [Inject]
    private SetUpSite Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private IEnumerable<Choice> Masses => Enum.GetValues<MassUnit>().Select(unit => new Choice(unit.ToString(), Text["Mass." + unit]));

    private IEnumerable<Choice> Temperatures => Enum.GetValues<TemperatureUnit>().Select(unit => new Choice(unit.ToString(), Text["Temperature." + unit]));

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, code.Value!, name.Value!, timeZone.Value!, currency.Value!, Enum.Parse<MassUnit>(mass.Value!),
            Enum.Parse<TemperatureUnit>(temperature.Value!))));
        if (outcome?.Succeeded == true) await SetUp.InvokeAsync();
    }
}
