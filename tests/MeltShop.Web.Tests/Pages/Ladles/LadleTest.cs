using System.Globalization;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Grades;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Ladles;

namespace MeltShop.Web.Tests.Pages.Ladles;

/// <summary>A heat of 3 t in the demo foundry's first furnace, weighed in as planned; figures of the test's own, no source.</summary>
public abstract class LadleTest : DemoShopTest
{
    protected virtual string GradeCode => "EN-GJS-500-7";

    protected long HeatId { get; private set; }

    protected override async Task Prepare() => HeatId = await Once($"heat of {GradeCode}", Start);

    private async Task<long> Start()
    {
        await base.Prepare();
        var view = await The<ChargePage>().Load(Cancellation);
        var plan = await The<PlanCharge>().Run(
            Founder, new(Guid.NewGuid(), Now, new(view.Furnaces.Single(f => f.Code == "furnace-1").Id, view.Grades.Single(g => g.Code == GradeCode).Id, 3000)), Cancellation);
        var heat = (await The<StartHeat>().Run(Founder, new(Guid.NewGuid(), Now, plan.Value.PlanId), Cancellation)).Value.HeatId;
        var material = view.Materials.First(m => m.Code == "pig-iron-nodular" || m.StockKg > 3000);
        await The<WeighIn>().Run(Founder, new(Guid.NewGuid(), Now, heat, material.Id, 2500, false), Cancellation);
        return heat;
    }

    protected async Task BathSample(params (string Element, double Percent)[] besides) => Assert.True((await The<RecordSample>().Run(Founder, new(
        Guid.NewGuid(), Now, HeatId, null, SampleKind.Bath,
        [[Read("C", 3.62), Read("Si", 1.40), Read("Mn", 0.30), Read("P", 0.025), Read("S", 0.012), Read("Cu", 0.30), .. besides.Select(e => Read(e.Element, e.Percent))]]), Cancellation)).Succeeded);

    protected Task<LadleView> Preparation() => Load(() => The<LadlePage>().Prepare(HeatId, Cancellation));

    protected Task<LadleView> Treated(long id) => Load(() => The<LadlePage>().Load(id, Cancellation));

    /// <summary>A ladle prepared for 800 kg by the grade's recipe.</summary>
    /// <param name="ladle">Which of the ladles in use.</param>
    protected async Task<long> Prepared(int ladle = 0)
    {
        await BathSample();
        var view = await Preparation();
        var recipe = view.Grade.Recipe!;
        return (await The<PreparePocket>().Run(Founder, new(
            Guid.NewGuid(), Now, HeatId, view.Ladles[ladle].Id, 800, 1480, null, recipe.TargetMgPercent, recipe.MgFloorPercent, recipe.MinutesToLastMould,
            view.Alloys.FirstOrDefault(m => m.Code == recipe.TreatmentAlloyCode)?.Id, view.Inoculants.Single(m => m.Code == recipe.InoculantCode).Id,
            recipe.InoculantRatePercent!.Value) { Extras = new() { Checks = PocketChecks.For(view.Grade.Family) } }, Cancellation)).Value.TreatedLadleId;
    }

    protected async Task Tap(long id, double kg) => Assert.True((await The<RecordTap>().Run(
        Founder, new(Guid.NewGuid(), Now, id, (await Treated(id)).Treated!.Version, kg, null), Cancellation)).Succeeded);

    protected async Task EndReaction(long id) => Assert.True((await The<EndReaction>().Run(
        Founder, new(Guid.NewGuid(), Now, id, (await Treated(id)).Treated!.Version), Cancellation)).Succeeded);

    /// <summary>A last-metal sample in the middle of every poured window but for the magnesium given.</summary>
    protected async Task LastMetal(long id, double magnesium)
    {
        var windows = (await Treated(id)).Grade.At(WindowStage.Poured).Where(w => Element.TryParse(w.Quantity, out _));
        var readings = windows.Select(w => Read(w.Quantity, w.Quantity == "Mg" ? magnesium : w.Aim ?? ((w.Least ?? 0) + (w.Most ?? w.Least!.Value)) / 2)).ToList();
        Assert.True((await The<RecordSample>().Run(
            Founder, new(Guid.NewGuid(), Now, HeatId, id, SampleKind.LastMetal, [readings]), Cancellation)).Succeeded);
    }

    private static ReadingInput Read(string element, double percent) => new(element, percent, false, percent.ToString(CultureInfo.InvariantCulture));

    private static async Task<LadleView> Load(Func<Task<LadleView?>> read) => (await read())!;
}
