using System.Security.Claims;
using MeltShop.Operations;
using MeltShop.Operations.Charging;
using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Ladles;
using MeltShop.Records;
using MeltShop.Records.Grades;
using MeltShop.Records.Laboratory;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Api.Entries;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Reading;
using MeltShop.Web.Demo;
using MeltShop.Web.SignIn;
using MeltShop.Web.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.JSInterop;

namespace MeltShop.Long;

/// <summary>The demo foundry on SQLite, a heat of its own with ladles to pour, and tablets at which somebody is signed in.</summary>
internal sealed class TabletsShop : IAsyncDisposable
{
    private readonly string file = Path.Combine(Path.GetTempPath(), $"meltshop-tablets-{Guid.NewGuid():N}.db");
    private readonly ServiceProvider services;
    private long heatId;

    private TabletsShop()
    {
        services = new ServiceCollection().AddLogging().AddSingleton(TimeProvider.System)
            .AddMeltShopRecords(Options).AddMeltShopOperations().AddSingleton<DemoFoundry>().AddMeltShopTexts()
            .AddSingleton<IJSRuntime, NoBrowser>().AddSingleton<NavigationManager, Nowhere>().AddSingleton<ShopSite>().AddSingleton<EntryDesk>()
            .AddScoped<AuthenticationStateProvider, SignedIn>().AddScoped<ActingPerson>().AddScoped<HandingIn>().BuildServiceProvider();
    }

    private RecordsOptions Options => new() { Provider = RecordsProvider.Sqlite, ConnectionString = $"Data Source={file}" };

    private static Acting Founder { get; } = new(1, "Founder", "long suite", Role.All);

    private static DateTimeOffset Now => TimeProvider.System.GetUtcNow();

    public static async Task<TabletsShop> Open()
    {
        var shop = new TabletsShop();
        await RecordsDatabase.MigrateAsync(shop.Options);
        await shop.Get<DemoFoundry>().SeedAsync(CancellationToken.None);
        await shop.Melt();
        return shop;
    }

    public TabletRenderer Tablet() => new(services.CreateScope().ServiceProvider, Get<ILoggerFactory>());

    /// <summary>A ladle whose reaction has ended.</summary>
    public async Task<long> Ladle()
    {
        var page = Get<LadlePage>();
        var view = (await page.Prepare(heatId))!;
        var recipe = view.Grade.Recipe!;
        var id = (await Do(Get<PreparePocket>(), new(
            Guid.NewGuid(), Now, heatId, view.Ladles[0].Id, 800, 1480, null, null, null, null, null, view.Inoculants.Single(m => m.Code == recipe.InoculantCode).Id,
            recipe.InoculantRatePercent!.Value) { Extras = new() { Checks = PocketChecks.For(IronFamily.Ductile) } })).TreatedLadleId;
        await Do(Get<RecordTap>(), new(Guid.NewGuid(), Now, id, (await page.Load(id))!.Treated!.Version, 790, null));
        await Do(Get<EndReaction>(), new(Guid.NewGuid(), Now, id, (await page.Load(id))!.Treated!.Version));
        return id;
    }

    public Task Mould(long ladleId, string label) => Do(Get<RecordMould>(), new(Guid.NewGuid(), Now, ladleId, label, 15, 5));

    public async ValueTask DisposeAsync()
    {
        await services.DisposeAsync();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        foreach (var ending in new[] { "", "-wal", "-shm" }) File.Delete(file + ending);
    }

    private async Task Melt()
    {
        var view = await Get<ChargePage>().Load();
        var grade = view.Grades.Single(g => g.Code == "EN-GJS-500-7").Id;
        var plan = await Do(Get<PlanCharge>(), new(Guid.NewGuid(), Now, new(view.Furnaces.Single(f => f.Code == "furnace-2").Id, grade, 5000)));
        heatId = (await Do(Get<StartHeat>(), new(Guid.NewGuid(), Now, plan.PlanId))).HeatId;
        await Do(Get<WeighIn>(), new(Guid.NewGuid(), Now, heatId, view.Materials.First(m => m.StockKg > 5000).Id, 5000, false));
        IReadOnlyList<ReadingInput> burn = [Read("C", "3.62"), Read("Si", "1.40"), Read("Mn", "0.30"), Read("P", "0.025"), Read("S", "0.012"), Read("Cu", "0.30")];
        await Do(Get<RecordSample>(), new(Guid.NewGuid(), Now, heatId, null, SampleKind.Bath, [burn]));
    }

    private TService Get<TService>()
        where TService : notnull => services.GetRequiredService<TService>();

    private static ReadingInput Read(string element, string percent) => new(element, double.Parse(percent, System.Globalization.CultureInfo.InvariantCulture), false, percent);

    private static async Task<TResult> Do<TCommand, TResult>(Operation<TCommand, TResult> operation, TCommand command)
        where TCommand : Command
    {
        var outcome = await operation.Run(Founder, command);
        return outcome.Succeeded ? outcome.Value : throw new InvalidOperationException(string.Join("; ", outcome.Findings));
    }

    private sealed class SignedIn : AuthenticationStateProvider
    {
        public override Task<AuthenticationState> GetAuthenticationStateAsync() => Task.FromResult(new AuthenticationState(new ClaimsPrincipal(new ClaimsIdentity(
            [new(PersonClaims.Id, "1"), new(PersonClaims.Name, Founder.PersonName), .. Role.All.Select(role => new Claim(PersonClaims.Role, role))], "test"))));
    }
}
