using MeltShop.Metallurgy.Quantities;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Storing;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>A plan as it was kept, with all that it used; the same question is answered once more beside it.</summary>
public sealed partial class KeptPlan
{
    private PlanAgain? again;
    private long openedId;
    private bool hasFailed;
    private IReadOnlyDictionary<string, string> names = new Dictionary<string, string>(); // a kept plan knows materials by code

    [Parameter]
    public long PlanId { get; set; }

    [Inject]
    private ChargePage Page { get; set; } = null!;

    [Inject]
    private StartHeat StartOperation { get; set; } = null!;

    [Inject]
    private ILogger<KeptPlan> Log { get; set; } = null!;

    private ChargeChoice? Choice => View is { } plan ? StoredChoice.Of(plan) : null;

    private bool IsPoured => Choice?.Target is ChargeTarget.Poured;

    private IReadOnlyList<string> LeftOutBins => Choice?.LeftOutBins ?? [];

    private string Confidence(double percent) => percent > 50 ? Text["Confidence", NumberText.Show(percent)] : Text["OnAverage"];

    private string MadeWith(string versions)
    {
        var made = FormulaVersions.OfCharge(versions);
        var form = CarbonEquivalent.Forms.FirstOrDefault(form => form.Id == made.CarbonEquivalent)?.Expression ?? made.CarbonEquivalent;
        return Text["Versions", made.Program, form, made.Analyses.Count];
    }

    protected override async Task<PlanView?> Read(CancellationToken ct)
    {
        if (await Page.Plan(PlanId, ct) is not { } plan) return null;
        if (again is null || openedId != plan.Id)
        {
            (again, hasFailed, openedId) = (null, false, plan.Id);
            names = await Page.MaterialNames(ct);
            await Open(plan, ct);
        }

        return plan;
    }

    protected override bool Concerns(ChangeNotice change) => change.Kind is ChangeKind.Heat or ChangeKind.Material or ChangeKind.Furnace or ChangeKind.Grade or ChangeKind.Plan or ChangeKind.Sample;

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
