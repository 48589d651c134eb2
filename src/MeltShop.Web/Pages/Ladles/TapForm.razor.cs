using MeltShop.Operations.Ladles;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>The mass that really went into the ladle, whatever was planned.</summary>
public sealed partial class TapForm
{
    private readonly EntryForm form = new();
    private readonly QuantityEntry kg;
    private readonly QuantityEntry temperature;

    public TapForm()
    {
        kg = form.Quantity("kg", 0, 100_000, isRequired: true);
        temperature = form.Quantity("temperatureC", 1100, 1700);
    }

    [Parameter, EditorRequired]
    public TreatedLadleView Treated { get; set; } = null!;

    [Inject]
    private RecordTap Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private async Task Save() => await HandingIn.Send(
        form, made => Operation.Run(made.By, new(made.Key, made.ObservedAt, Treated.Id, Treated.Version, kg.Needed, temperature.Value)));
}
