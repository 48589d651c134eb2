using MeltShop.Operations;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Grades;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Ladles;
using MeltShop.Operations.Sites;
using MeltShop.Operations.Yard;
using MeltShop.Records;
using MeltShop.Records.Grades;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Yard;
using MeltShop.Web.Tests.Running;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace MeltShop.Web.Tests.Api.Weighings;

/// <summary>A running app with one heat that has been charged for an hour from one material; figures of the test's own, no source.</summary>
public sealed class ScaleShop : WebApp, IAsyncLifetime
{
    private Acting founder = null!;

    public string HeatNumber { get; private set; } = "";

    private static DateTimeOffset Now => TimeProvider.System.GetUtcNow();

    public async ValueTask InitializeAsync()
    {
        var id = await AddPersonAsync("tilda", Role.Melter, Role.Metallurgist, Role.Administrator);
        await AddPersonAsync("ivo", Role.Inspector);
        founder = new Acting(id, "tilda Somebody", "test", [Role.Melter, Role.Metallurgist, Role.Administrator]);
        await Do<SetUpSite, SetUpSite.Command, long>(new(Guid.NewGuid(), Now, "T", "Test foundry", "Europe/Berlin", "EUR"));
        var furnace = await Do<AddFurnace, AddFurnace.Command, long>(new(Guid.NewGuid(), Now, "F1", "Furnace 1", 3000, 1800));
        await Do<AddMaterial, AddMaterial.Command, long>(new(
            Guid.NewGuid(), Now, "pig", "Test pig", MaterialKind.PigIron, MaterialUses.Charge, 400, 98, [new("C", 4.2)], "Test figures", "memory"));
        var grade = await Do<AddGrade, AddGrade.Command, long>(new(
            Guid.NewGuid(), Now, "grey", IronFamily.Grey, "Test figures", [new(WindowStage.Furnace, "C", 3, 4, 5), new(WindowStage.Poured, "C", 3, 4, 5)], null));
        var plan = await Do<PlanCharge, PlanCharge.Command, PlanCharge.Result>(new(Guid.NewGuid(), Now, new ChargeChoice(furnace, grade, 2000)));
        HeatNumber = (await Do<StartHeat, StartHeat.Command, StartHeat.Result>(new(Guid.NewGuid(), Now.AddHours(-1), plan.PlanId))).Number;
    }

    /// <summary>When the first coin of the heat's bath was taken: a minute ago, if there was none.</summary>
    public async Task<DateTimeOffset> FirstCoin()
    {
        await using var db = await Services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContextAsync();
        if (await db.Samples.OrderBy(s => s.Id).FirstOrDefaultAsync(s => s.Kind == SampleKind.Bath) is { } first) return first.ObservedAt;
        var (heat, takenAt) = (await db.Heats.SingleAsync(), Now.AddMinutes(-1));
        await Do<RecordSample, RecordSample.Command, long>(new(Guid.NewGuid(), takenAt, heat.Id, null, SampleKind.Bath, [[new("C", 4, false, "4.00")]]));
        return takenAt;
    }

    /// <summary>A ladle of this code prepared for 800 kg of the heat's iron.</summary>
    public async Task Prepare(string code)
    {
        await using var db = await Services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContextAsync();
        var (heat, pig) = (await db.Heats.SingleAsync(), await db.Materials.SingleAsync(m => m.Code == "pig"));
        await Do<WeighIn, WeighIn.Command, long>(new(Guid.NewGuid(), Now, heat.Id, pig.Id, 2000, false));
        await Do<RecordSample, RecordSample.Command, long>(new(Guid.NewGuid(), Now, heat.Id, null, SampleKind.Bath, [[new("C", 4, false, "4.00")]]));
        var ladle = await Do<AddLadle, AddLadle.Command, long>(new(Guid.NewGuid(), Now, code, code, "sandwich", 1100, 40, 50, null, 0.001, 5, "Test figures"));
        var inoculant = await Do<AddMaterial, AddMaterial.Command, long>(new(
            Guid.NewGuid(), Now, $"inoculant of {code}", "Test inoculant", MaterialKind.Inoculant, MaterialUses.Inoculation, 2000, 100, [new("Si", 72)], "Test figures", "memory"));
        await Do<PreparePocket, PreparePocket.Command, PreparePocket.Result>(new(
            Guid.NewGuid(), Now, heat.Id, ladle, 800, 1450, null, null, null, null, null, inoculant, 0.2) { Extras = new() { Checks = PocketChecks.For(IronFamily.Grey) } });
    }

    /// <summary>A spectrometer of this code; its id.</summary>
    public Task<long> Spectrometer(string code) =>
        Do<AddInstrument, AddInstrument.Command, long>(new(Guid.NewGuid(), Now, code, "Spectrometer", InstrumentKind.Spark, false, []));

    /// <summary>A reference material of this code.</summary>
    public Task Reference(string code) =>
        Do<AddReferenceMaterial, AddReferenceMaterial.Command, long>(new(Guid.NewGuid(), Now, code, "White iron block", "invented for a test", [new("C", 3.30, 0.02)]));

    public async Task<List<ControlSample>> Checks(string instrument)
    {
        await using var db = await Services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContextAsync();
        return await db.ControlSamples.AsNoTracking().Include(c => c.Readings)
            .Where(c => db.Instruments.Any(i => i.Id == c.InstrumentId && i.Code == instrument)).OrderBy(c => c.Id).ToListAsync();
    }

    public async Task<List<Sample>> Samples(string instrument)
    {
        await using var db = await Services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContextAsync();
        return await db.Samples.AsNoTracking().Include(s => s.Figures).Include(s => s.Burns).ThenInclude(b => b.Readings)
            .Where(s => db.Instruments.Any(i => i.Id == s.InstrumentId && i.Code == instrument)).OrderBy(s => s.Id).ToListAsync();
    }

    public async Task<List<Tap>> Taps()
    {
        await using var db = await Services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContextAsync();
        return await db.Taps.AsNoTracking().OrderBy(t => t.Id).ToListAsync();
    }

    public async Task<List<Weighing>> Weighings()
    {
        await using var db = await Services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContextAsync();
        return await db.Weighings.AsNoTracking().OrderBy(w => w.Id).ToListAsync();
    }

    private async Task<TResult> Do<TOperation, TCommand, TResult>(TCommand command)
        where TOperation : Operation<TCommand, TResult>
        where TCommand : Command
    {
        var outcome = await Services.GetRequiredService<TOperation>().Run(founder, command);
        Assert.True(outcome.Succeeded, string.Join("; ", outcome.Findings));
        return outcome.Value;
    }
}
