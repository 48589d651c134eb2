using MeltShop.Operations.Ladles;
using MeltShop.Operations.Sites;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Writing;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>Ladles and treatment stations: what the pocket card reckons with, and how sure each figure is.</summary>
public sealed partial class EquipmentList
{
    private IReadOnlyDictionary<long, LadleRecovery> learnt = new Dictionary<long, LadleRecovery>();

    [Inject]
    private LearntRecoveries Learning { get; set; } = null!;

    [Inject]
    private EquipmentPage Page { get; set; } = null!;

    [Inject]
    private SetLadleFigure Figures { get; set; } = null!;

    [Inject]
    private AddLadle Add { get; set; } = null!;

    protected override async Task<EquipmentView?> Read(CancellationToken ct)
    {
        learnt = await Learning.Load(ct);
        return await Page.Load(ct);
    }

    protected override bool Concerns(ChangeNotice change) => change.Kind is ChangeKind.Ladle or ChangeKind.TreatedLadle or ChangeKind.Sample;
}
