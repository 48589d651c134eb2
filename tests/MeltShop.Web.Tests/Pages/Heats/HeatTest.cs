using AngleSharp.Dom;
using Bunit;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Heats;
using MeltShop.Web.Pages.Heats;
using MeltShop.Web.Tests.Pages.Charge;

namespace MeltShop.Web.Tests.Pages.Heats;

/// <summary>A heat of 2000 kg that has just been started.</summary>
public abstract class HeatTest : MeltingShop
{
    protected long HeatId { get; private set; }

    protected override async Task Prepare()
    {
        await base.Prepare();
        HeatId = await Once($"heat of {GetType()}", Start);
    }

    private async Task<long> Start()
    {
        await Furnish();
        var plan = await The<PlanCharge>().Run(Founder, new(Guid.NewGuid(), Now, new ChargeChoice(FurnaceId, GradeId, 2000)), Cancellation);
        return (await The<StartHeat>().Run(Founder, new(Guid.NewGuid(), Now, plan.Value.PlanId), Cancellation)).Value.HeatId;
    }

    /// <summary>What else lies in the yard before the plan is made; it is laid once for all tests of a class.</summary>
    protected virtual Task Furnish() => Task.CompletedTask;

    protected async Task<HeatView> Heat() => (await The<HeatPage>().Load(HeatId, Cancellation))!;

    protected Task WeighIn(string code, double kg) =>
        The<WeighIn>().Run(Founder, new(Guid.NewGuid(), Now, HeatId, MaterialIds[code], kg, false), Cancellation);

    /// <summary>Weighs in all that was planned.</summary>
    protected async Task WeighAll()
    {
        var heat = await Heat();
        foreach (var row in WeighingRow.Of(heat, (await The<Records.Reading.Yard.YardPage>().Load(null, Cancellation)).Materials)) await WeighIn(row.Code, row.TargetKg);
    }

    /// <summary>A coin with a burn for each row of percents: C, Si, Mn.</summary>
    protected async Task<long> Sample(params double[][] burns) => (await The<RecordSample>().Run(Founder, new(
        Guid.NewGuid(), Now, HeatId, null, SampleKind.Bath,
        [.. burns.Select(burn => (IReadOnlyList<ReadingInput>)[Read("C", burn[0]), Read("Si", burn[1]), Read("Mn", burn[2])])]), Cancellation)).Value;

    protected Task<long> GoodSample() => Sample([3.64, 1.50, 0.30], [3.65, 1.51, 0.30], [3.66, 1.52, 0.31]);

    protected IRenderedComponent<HeatDetail> Open(string role = Role.Melter)
    {
        SignIn(role);
        var page = Render<HeatDetail>(parameters => parameters.Add(p => p.HeatId, HeatId));
        page.WaitForState(() => page.FindAll("[data-state=ready]").Count > 0, Patience);
        return page;
    }

    protected static IElement Field(IRenderedComponent<HeatDetail> page, string form, string path) =>
        page.WaitForElement($"[data-testid={form}] [data-field=\"{path}\"]", Patience);

    protected static void Type(IRenderedComponent<HeatDetail> page, string form, string path, string text) =>
        page.Find($"[data-testid={form}] [data-field=\"{path}\"] input").Change(text);

    /// <summary>Presses a button as soon as it is there: a press before it may still be being drawn.</summary>
    protected static void Press(IRenderedComponent<HeatDetail> page, string words)
    {
        page.WaitForState(() => page.FindAll("button").Any(button => button.TextContent.Trim() == words), Patience);
        page.Do(() => page.FindAll("button").Single(button => button.TextContent.Trim() == words).ClickAsync());
    }

    protected static string? Error(IRenderedComponent<HeatDetail> page, string form, string path) =>
        Field(page, form, path).QuerySelector(".field-error")?.GetAttribute("data-code");

    protected static ReadingInput Read(string element, double percent) => new(element, percent, false, FormattableString.Invariant($"{percent}"));
}
