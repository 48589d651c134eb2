using MeltShop.Operations.Correcting;
using MeltShop.Web.Pages.Heats;
using MeltShop.Web.Tests.Pages.Heats;

namespace MeltShop.Web.Tests.Pages.Correction;

/// <summary>A heat whose bath lacks carbon and silicon, and its correction.</summary>
public abstract class CorrectionTest : HeatTest
{
    protected async Task LowBath()
    {
        await WeighIn("steel", 1500);
        await Sample([3.40, 1.20, 0.30], [3.41, 1.21, 0.30], [3.39, 1.19, 0.30]);
    }

    protected async Task Accept(CorrectionChoice choice, int minutes = 0)
    {
        var facts = (await The<CorrectionForecast>().Facts(HeatId, Cancellation))!;
        var proposal = CorrectionProposal.For(facts, choice, CorrectionQuestion.Build(facts, choice).Problem!, Cancellation);
        var outcome = await The<AcceptCorrection>().Run(Founder, new(
            Guid.NewGuid(), Now.AddMinutes(minutes), HeatId, facts.Bath.SampleId, choice, SeenCorrection.Of(proposal)), Cancellation);
        Assert.Empty(outcome.Findings);
    }

    /// <summary>The accepted correction as the melter sees it.</summary>
    protected async Task<CorrectionTask> MeltersTask()
    {
        var heat = await Heat();
        return CorrectionTask.Of(Assert.Single(heat.Corrections), heat, []);
    }
}
