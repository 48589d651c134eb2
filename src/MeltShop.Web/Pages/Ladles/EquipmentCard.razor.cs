using MeltShop.Operations.Ladles;
using MeltShop.Records.Reading.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>One ladle or station with its figures; what nobody said stands there as not said.</summary>
public sealed partial class EquipmentCard
{
    [Parameter, EditorRequired]
    public EquipmentLadle Ladle { get; set; } = null!;

    /// <summary>What its fillings say of its recovery.</summary>
    [Parameter]
    public LadleRecovery? Learnt { get; set; }

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    [Parameter, EditorRequired]
    public DateTimeOffset Now { get; set; }

    [Parameter]
    public EventCallback Changed { get; set; }
}
