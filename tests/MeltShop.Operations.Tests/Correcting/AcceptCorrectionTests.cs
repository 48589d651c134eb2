using MeltShop.Charging;
using MeltShop.Charging.Problems;
using MeltShop.Operations.Correcting;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Storing;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading;
using MeltShop.Records.Reading.Heats;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Correcting;

public sealed class AcceptCorrectionTests
{
    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Correction_Accepted_IsKeptWithAllThatItUsedAndGivesTheSameNumbersAgain(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (heat, sample) = await Low(shop);
        var command = new AcceptCorrection.Command(Guid.NewGuid(), shop.Now, heat.Id, sample, new(1450), await Seen(shop, heat));

        var first = await Shop.Do(shop.Get<AcceptCorrection>(), shop.Melter, command);
        var second = await Shop.Do(shop.Get<AcceptCorrection>(), shop.Melter, command);

        Assert.Equal(first.Value, second.Value);
        var kept = Assert.Single((await shop.Get<CorrectionPage>().Load(heat.Id, Soon))!.Corrections);
        Assert.Equal((first.Value, sample, "Cost"), (kept.Id, kept.SampleId, kept.Goal));
        var proposal = StoredJson.Value<CorrectionProposal>(kept.Answer);
        var again = CorrectionOptimiser.Plan(StoredJson.Value<CorrectionProblem>(kept.Problem), Soon);
        Assert.Equal(proposal.Plan.Plan.Lines, again.Plan.Lines);
        Assert.Equal(proposal.Plan.Plan.Analysis, again.Plan.Analysis);
        Assert.Equal((decimal)Math.Round(proposal.Cost, 2), kept.TotalCost);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Correction_WhoseSampleWasCorrectedSince_SaysSo(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (heat, sample) = await Low(shop);
        await Shop.Do(shop.Get<AcceptCorrection>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, sample, new(1450), await Seen(shop, heat)));
        Assert.Empty(Assert.Single((await shop.Get<HeatPage>().Load(heat.Id, Soon))!.Corrections).Stale);
        shop.Clock.Advance(1);

        var put = await Shop.Do(shop.Get<CorrectSample>(), shop.Metallurgist, new(
            Guid.NewGuid(), shop.Now, sample, heat.Id, null, SampleKind.Bath, null, "18", null, "coin of the other furnace"));

        Assert.True(put.Succeeded);
        var kept = Assert.Single((await shop.Get<HeatPage>().Load(heat.Id, Soon))!.Corrections);
        var note = Assert.Single(kept.Stale);
        Assert.Equal((StaleKind.Sample, "coin of the other furnace"), (note.Kind, note.Reason));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Correction_WhoseMaterialHasAnotherAnalysisSince_SaysSo(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (heat, sample) = await Low(shop);
        await Shop.Do(shop.Get<AcceptCorrection>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, sample, new(1450), await Seen(shop, heat)));
        await using var db = shop.Db();
        var version = (await db.Materials.SingleAsync(m => m.Id == shop.CarburiserId, Soon)).Version;

        var put = await Shop.Do(shop.Get<CorrectAnalysis>(), shop.Metallurgist, new(
            Guid.NewGuid(), shop.Now, shop.CarburiserId, version, [new("C", 92, null, 90)], "delivery note", "certificate", "another grade of carbon"));

        Assert.Empty(put.Findings);
        var note = Assert.Single(Assert.Single((await shop.Get<HeatPage>().Load(heat.Id, Soon))!.Corrections).Stale);
        Assert.Equal((StaleKind.Analysis, "another grade of carbon"), (note.Kind, note.Reason));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Correction_MadeWithoutAdditionsThatCameLateOrFromAnotherHeat_SaysSo(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var before = await shop.Bath();
        await shop.Close(before, await shop.InFurnace());
        var (heat, sample) = await Low(shop);
        var added = shop.Now;
        shop.Clock.Advance(5);
        await Shop.Do(shop.Get<AcceptCorrection>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, sample, new(1450), await Seen(shop, heat)));
        await using var db = shop.Db();
        var wrong = await db.Weighings.Where(w => w.HeatId == before.Id).OrderBy(w => w.Id).FirstAsync(Soon);

        await Shop.Do(shop.Get<WeighIn>(), shop.Melter, new(Guid.NewGuid(), added, heat.Id, shop.CarburiserId, 2, true));
        Assert.Empty((await Shop.Do(shop.Get<CorrectWeighing>(), shop.Melter, new(
            Guid.NewGuid(), shop.Now, wrong.Id, heat.Id, wrong.MaterialId, wrong.Kg, true, "wrong furnace", added))).Findings);

        var notes = Assert.Single((await shop.Get<HeatPage>().Load(heat.Id, Soon))!.Corrections).Stale;
        Assert.Equal([(StaleKind.MissedWeighing, null), (StaleKind.MissedWeighing, "wrong furnace")], notes.OrderBy(n => n.At).Select(n => (n.Kind, n.Reason)));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Correction_MadeWithoutAChargeThatCameLate_SaysSoUnlessADipHadMeasuredTheBath(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (heat, sample) = await Low(shop);
        var charged = shop.Now.AddMinutes(-30);
        shop.Clock.Advance(5);
        await Shop.Do(shop.Get<AcceptCorrection>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, sample, new(1450), await Seen(shop, heat)));
        shop.Clock.Advance(5);
        await Shop.Do(shop.Get<DipFurnace>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.FurnaceId, 1800, null, "dipped with a bar"));
        shop.Clock.Advance(5);
        await Shop.Do(shop.Get<AcceptCorrection>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, sample, new(1450), await Seen(shop, heat)));
        shop.Clock.Advance(5);

        await Shop.Do(shop.Get<WeighIn>(), shop.Melter, new(Guid.NewGuid(), charged, heat.Id, shop.SteelId, 300, null));

        var known = (await shop.Get<HeatPage>().Load(heat.Id, Soon))!;
        Assert.False(known.Weighings[^1].IntoBath);
        Assert.Equal(3.40, known.Samples.Single().Mean(Metallurgy.Elements.Element.C)!.Value, 9);
        Assert.Equal([1, 0], known.Corrections.Select(c => c.Stale.Count(n => n.Kind is StaleKind.MissedWeighing)));
    }

    /// <summary>A dip that was read again says the level still; one that was found to be from before the charge says nothing of it.</summary>
    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Correction_MadeWithoutAChargeThatCameLate_SaysSoWhereTheDipWasPutBeforeIt(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (heat, sample) = await Low(shop);
        var charged = shop.Now.AddMinutes(-30);
        shop.Clock.Advance(5);
        await Shop.Do(shop.Get<DipFurnace>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.FurnaceId, 1800, null, "dipped with a bar"));
        shop.Clock.Advance(5);
        await Correct(1810, at: null, "read again");
        await Accept();
        await Correct(1810, charged.AddMinutes(-10), "dipped before it");
        await Accept();

        await Shop.Do(shop.Get<WeighIn>(), shop.Melter, new(Guid.NewGuid(), charged, heat.Id, shop.SteelId, 300, null));

        var known = (await shop.Get<HeatPage>().Load(heat.Id, Soon))!;
        Assert.Equal([0, 1], known.Corrections.Select(c => c.Stale.Count(n => n.Kind is StaleKind.MissedWeighing)));

        async Task Correct(double kg, DateTimeOffset? at, string reason)
        {
            var dip = (await shop.Get<HeatPage>().Load(heat.Id, Soon))!.Metal.Single(m => m.Kind is FurnaceMetalKind.Dipped && !m.Origin.IsCorrected).Origin.FactId;
            Assert.Empty((await Shop.Do(shop.Get<CorrectMetal>(), shop.Melter, new(Guid.NewGuid(), shop.Now, dip, kg, null, reason, at))).Findings);
            shop.Clock.Advance(5);
        }

        async Task Accept()
        {
            Assert.Empty((await Shop.Do(shop.Get<AcceptCorrection>(), shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, sample, new(1450), await Seen(shop, heat)))).Findings);
            shop.Clock.Advance(5);
        }
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Correction_ThatCannotStand_IsRefusedAndNothingIsKept(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (heat, sample) = await Low(shop);
        var operation = shop.Get<AcceptCorrection>();
        AcceptCorrection.Command Asked(long heatId, long sampleId, CorrectionChoice choice) => new(Guid.NewGuid(), shop.Now, heatId, sampleId, choice, new(0, new Dictionary<string, double>()));

        await shop.Refuses(operation, shop.Inspector, Asked(heat.Id, sample, new(1450)), "", "right.missing");
        await shop.Refuses(operation, shop.Melter, Asked(4711, sample, new(1450)), "heatId", "bath.unknown");
        await shop.Refuses(operation, shop.Melter, Asked(heat.Id, sample, new(20)), "temperatureC", "temperature.outOfRange");
        await shop.Refuses(operation, shop.Melter, Asked(heat.Id, sample, new(1450, LeftOut: ["carbon", "pig"])), "", "correction.impossible");

        shop.Clock.Advance(30);
        var good = await shop.Sample(heat, SampleKind.Bath, ("C", 3.65), ("Si", 1.5), ("Mn", 0.3));
        await shop.Refuses(operation, shop.Melter, Asked(heat.Id, sample, new(1450)), "sampleId", "sample.notLast");
        await shop.Refuses(operation, shop.Melter, Asked(heat.Id, good, new(1450)), "", "correction.idle");
        await using var db = shop.Db();
        Assert.Equal(0, await db.BathCorrections.CountAsync(Soon));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Correction_ThatIsAnotherOneByNow_IsRefusedUntilItWasSeen(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var (heat, sample) = await Low(shop);
        var seen = await Seen(shop, heat);
        await shop.WeighIn(heat, shop.SteelId, 50, intoBath: true);
        var operation = shop.Get<AcceptCorrection>();

        await shop.Refuses(operation, shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, sample, new(1450), seen), "", "correction.moved");

        var outcome = await Shop.Do(operation, shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, sample, new(1450), await Seen(shop, heat)));
        Assert.True(outcome.Succeeded);
    }

    /// <summary>Both wait for the row of the heat, the other one first: the correction was solved before it and is written after it.</summary>
    [Theory]
    [InlineData(true, "sampleId", "sample.notLast")]
    [InlineData(false, "", "correction.moved")]
    public async Task Correction_WhileASampleOrAWeighingComes_IsNotKeptForTheBathOfBefore(bool isSample, string path, string code)
    {
        await using var shop = await Shop.Open(RecordsProvider.Postgres);
        var (heat, sample) = await Low(shop);
        var seen = await Seen(shop, heat);
        shop.Clock.Advance(1);
        await using var db = shop.Db();
        await using var gate = await db.Database.BeginTransactionAsync(Soon);
        await db.Database.ExecuteSqlAsync($"""SELECT 1 FROM "Heats" FOR UPDATE""", Soon);
        Task other = isSample ? shop.Sample(heat, SampleKind.Bath, ("C", 3.45), ("Si", 1.25), ("Mn", 0.3)) : shop.WeighIn(heat, shop.SteelId, 50, intoBath: true);
        await shop.Waiting(1);
        var accepted = shop.Get<AcceptCorrection>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, sample, new(1450), seen), Soon);
        await shop.Waiting(2);
        await gate.RollbackAsync(Soon);

        await other;
        Assert.Equal((path, code), Assert.Single((await accepted).Findings) is var finding ? (finding.Path, finding.Code) : default);
    }

    /// <summary>Solved with the price of before it waits for the furnace, until the price is another.</summary>
    [Fact]
    public async Task Correction_WhileAPriceIsChanged_IsNotKeptAtThePriceOfBefore()
    {
        await using var shop = await Shop.Open(RecordsProvider.Postgres);
        var (heat, sample) = await Low(shop);
        var seen = await Seen(shop, heat);
        await using var db = shop.Db();
        await using var gate = await db.Database.BeginTransactionAsync(Soon);
        await db.Database.ExecuteSqlAsync($"""SELECT 1 FROM "Furnaces" FOR UPDATE""", Soon);
        var accepted = shop.Get<AcceptCorrection>().Run(shop.Melter, new(Guid.NewGuid(), shop.Now, heat.Id, sample, new(1450), seen), Soon);
        await shop.Waiting(1);
        var version = await db.Materials.Where(m => m.Id == shop.CarburiserId).Select(m => m.Version).SingleAsync(Soon);
        Assert.True((await Shop.Do(shop.Get<ChangePrice>(), shop.Metallurgist, new(Guid.NewGuid(), shop.Now, shop.CarburiserId, version, 9999m))).Succeeded);
        await gate.RollbackAsync(Soon);

        Assert.Equal(("", "correction.moved"), Assert.Single((await accepted).Findings) is var finding ? (finding.Path, finding.Code) : default);
    }

    /// <summary>What the page of the correction shows for a bath of 1450 °C.</summary>
    internal static async Task<SeenCorrection> Seen(Shop shop, Heat heat)
    {
        var facts = (await shop.Get<CorrectionForecast>().Facts(heat.Id, Soon))!;
        return SeenCorrection.Of(CorrectionProposal.For(facts, new(1450), CorrectionQuestion.Build(facts, new(1450)).Problem!, Soon));
    }

    internal static async Task<(Heat Heat, long SampleId)> Low(Shop shop)
    {
        var heat = await shop.StartHeat();
        await shop.WeighIn(heat, shop.SteelId, 1500);
        shop.Clock.Advance(60);
        var sample = await shop.Sample(heat, SampleKind.Bath, ("C", 3.40), ("Si", 1.2), ("Mn", 0.3));
        return (await shop.Heat(heat.Id), sample);
    }
}
