using MeltShop.Metallurgy.Treatment;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Reading.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>What the ladle's own fillings say of its recovery, beside the published range and what the shop reckons with.</summary>
public sealed partial class LearntNote
{
    [Parameter, EditorRequired]
    public EquipmentLadle Ladle { get; set; } = null!;

    [Parameter, EditorRequired]
    public LadleRecovery? Learnt { get; set; }

    private MagnesiumProcess? Printed => LadleProcess.Of(Ladle.Ladle.Process);
}
