using MeltShop.Operations;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Sites;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Fields;
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

    [Inject]
    private UseLadle Use { get; set; } = null!;

    private Task<Outcome<Guid>> Say(EntryMade made, bool isActive) =>
        Use.Run(made.By, new(made.Key, made.ObservedAt, Ladle.Ladle.Id, Ladle.Version, isActive));
}
