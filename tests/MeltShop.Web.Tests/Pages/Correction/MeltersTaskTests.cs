using Bunit;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Laboratory;
using MeltShop.Web.Pages.Heats;

namespace MeltShop.Web.Tests.Pages.Correction;

/// <summary>An accepted correction beside what is done and what the next sample shows.</summary>
public sealed class MeltersTaskTests : CorrectionTest
{
    /// <summary>Each correction keeps its promise beside the sample that followed it, and before the next one.</summary>
    [Fact]
    public async Task Correction_AfterAnEarlierOne_LeavesThePairOfThatToBeSeen()
    {
        await LowBath();
        await Accept(new(1450));
        await Coin(1, 3.45);
        await Accept(new(1450), 2);
        await Coin(3, 3.61);
        var page = Open();

        Assert.Contains("→ 3.61", page.WaitForElement("[data-testid=predicted] [data-element=C]", Patience).TextContent, StringComparison.Ordinal);
        Assert.Contains("→ 3.45", Assert.Single(page.FindAll("[data-testid=earlier-corrections] [data-testid=predicted-before] [data-element=C]")).TextContent, StringComparison.Ordinal);

        async Task Coin(int minutes, double carbon) => Assert.Empty((await The<RecordSample>().Run(Founder, new(
            Guid.NewGuid(), Now.AddMinutes(minutes), HeatId, null, SampleKind.Bath, [[Read("C", carbon), Read("Si", 1.25), Read("Mn", 0.30)]]), Cancellation)).Findings);
    }

    /// <summary>Manganese of 1.2 % cannot be taken out: iron has to go, and leaner iron in.</summary>
    [Fact]
    public async Task Correction_WithTappingOff_IsDoneOnlyWhenThatMuchIsOut()
    {
        await WeighIn("steel", 1900);
        await Sample([3.60, 1.60, 1.20], [3.61, 1.60, 1.20]);
        await Accept(new(1450, MaxTapOffKg: 1500, TapOffCostPerTonne: 100));
        var before = await MeltersTask();
        Assert.InRange(before.TapOffKg, 100, 1500);
        foreach (var line in before.Lines)
        {
            await The<WeighIn>().Run(Founder, new(Guid.NewGuid(), Now, HeatId, MaterialIds[line.Code], line.TargetKg, true), Cancellation);
        }

        Assert.Equal((false, false), ((await MeltersTask()).IsTappedOff, (await MeltersTask()).IsDone));
        Assert.Contains("still", Open().Find("[data-testid=tap-off-first]").TextContent, StringComparison.Ordinal);

        await The<PigOut>().Run(Founder, new(Guid.NewGuid(), Now, HeatId, before.TapOffKg, null), Cancellation);
        Assert.Equal((true, true), ((await MeltersTask()).IsTappedOff, (await MeltersTask()).IsDone));
    }

    [Fact]
    public async Task NextSample_ThatBrokeGrey_LeavesTheCarbonUnjudgedBesideThePrediction()
    {
        await LowBath();
        await Accept(new(1450));
        await The<RecordSample>().Run(Founder, new(
            Guid.NewGuid(), Now.AddMinutes(1), HeatId, null, SampleKind.Bath, [[Read("C", 3.1), Read("Si", 1.5), Read("P", 0.02)]], GreyFracture: true), Cancellation);
        var task = await MeltersTask();

        Assert.Equal((null, false), (Of("C").Measured, Of("C").IsJudged));
        Assert.Equal((1.5, true), (Of("Si").Measured, Of("Si").IsJudged));
        Assert.Contains("→ not judged", Open().Find("[data-testid=predicted] [data-element=C]").TextContent, StringComparison.Ordinal);

        PredictedValue Of(string quantity) => task.Predicted.Single(value => value.Quantity == quantity);
    }

    /// <summary>CE = C + (Si + P) / 3 = 3.6 + (1.48 + 0.02) / 3 = 4.1.</summary>
    [Fact]
    public async Task NextSample_OfAGradeWithACarbonEquivalent_IsHeldAgainstItToo()
    {
        await The<RecordSample>().Run(Founder, new(
            Guid.NewGuid(), Now, HeatId, null, SampleKind.Bath, [[Read("C", 3.6), Read("Si", 1.48), Read("P", 0.02)]]), Cancellation);
        var sample = Assert.Single((await Heat()).Samples);

        Assert.Equal(4.1, PredictedValue.Of("CE", 4.15, sample).Measured!.Value, 1e-9);
        Assert.False(PredictedValue.Of("CE", 4.15, sample with { GreyFracture = true }).IsJudged);
        Assert.Null(PredictedValue.Of("Cu", 0.1, sample).Measured);
    }
}
