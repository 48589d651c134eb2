using MeltShop.Operations.Charging;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Writing;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>A plan as it was kept, with all that it used; the same question is answered once more beside it.</summary>
public sealed partial class KeptPlan
{
    private PlanAgain? again;
    private bool hasFailed;
    private readonly Dictionary<string, string> names = []; // a kept plan names materials by the codes of its day

    [Parameter]
    public long PlanId { get; set; }

    [Inject]
    private ChargePage Page { get; set; } = null!;

    [Inject]
    private ILogger<KeptPlan> Log { get; set; } = null!;

    private bool IsPoured => View is { } plan && StoredChoice.Of(plan)?.Target is ChargeTarget.Poured;

    protected override async Task<PlanView?> Read(CancellationToken ct)
    {
        if (await Page.Plan(PlanId, ct) is not { } plan) return null;
        if (again is null) await Open(plan, ct);
        return plan;
    }

    protected override bool Concerns(ChangeNotice change) => change.Kind is ChangeKind.Heat;

    private async Task Open(PlanView plan, CancellationToken ct)
    {
        try
        {
            again = await Task.Run(() => PlanAgain.Of(plan, ct), ct);
        }
#pragma warning disable CA1031 // whatever kept it from being opened: the page says so
        catch (Exception fault) when (fault is not OperationCanceledException)
#pragma warning restore CA1031
        {
            Log.LogError(fault, "A kept plan could not be opened");
            hasFailed = true;
        }
    }
}
