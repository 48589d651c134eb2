using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Entries;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>The mass that really went into the ladle, whatever was planned.</summary>
public sealed partial class TapForm
{
    private readonly TapEntry entry = new();

    [Parameter, EditorRequired]
    public TreatedLadleView Treated { get; set; } = null!;

    protected override void OnParametersSet()
    {
        entry.Belongs("treatedLadleId", Treated.Id);
        entry.Belongs("version", Treated.Version);
    }
}
