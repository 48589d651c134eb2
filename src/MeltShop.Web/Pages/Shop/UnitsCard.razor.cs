using MeltShop.Operations.Sites;
using MeltShop.Records.Reading.Sites;
using MeltShop.Records.Sites;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Shop;

/// <summary>The units in which the whole shop reads and types.</summary>
public sealed partial class UnitsCard
{
    private readonly EntryForm form = new();
    private readonly TextEntry mass, temperature;

    public UnitsCard() => (mass, temperature) = (form.Choice("mass", isRequired: true), form.Choice("temperature", isRequired: true));

    [Parameter, EditorRequired]
    public SiteView Standing { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool MayChoose { get; set; }

    [Parameter, EditorRequired]
    public IReadOnlyList<string> Roles { get; set; } = [];

    /// <summary>After it was recorded.</summary>
    [Parameter]
    public EventCallback Chosen { get; set; }

    [Inject]
    private ChooseUnits Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private IEnumerable<Choice> Masses => Enum.GetValues<MassUnit>().Select(unit => new Choice(unit.ToString(), Text["Mass." + unit]));

    private IEnumerable<Choice> Temperatures => Enum.GetValues<TemperatureUnit>().Select(unit => new Choice(unit.ToString(), Text["Temperature." + unit]));

    protected override void OnInitialized()
    {
        mass.Showing(Standing.MassUnit.ToString());
        temperature.Showing(Standing.TemperatureUnit.ToString());
    }

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, Enum.Parse<MassUnit>(mass.Value!), Enum.Parse<TemperatureUnit>(temperature.Value!))));
        if (outcome?.Succeeded == true) await Chosen.InvokeAsync();
    }
}
