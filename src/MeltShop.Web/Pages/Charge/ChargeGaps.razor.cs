using MeltShop.Records.Reading.Charge;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

public sealed partial class ChargeGaps
{
    [Parameter, EditorRequired]
    public ChargeView View { get; set; } = null!;
}
