using MeltShop.Operations.People;
using MeltShop.Operations.Sites;
using MeltShop.Records;
using MeltShop.Records.People;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Web.Demo;

/// <summary>
/// Makes the demo foundry in an empty database, by the operations that make a real one. Broken off, it goes on at the next start;
/// a database that holds anything else is left alone.
/// </summary>
internal sealed class DemoFoundry(IServiceProvider services, IDbContextFactory<RecordsContext> contexts, TimeProvider time)
{
    /// <summary>Of every demo person; the sign-in page shows it, and it exists in the demo only.</summary>
    public const string Password = "ottersfehn-demo";

    private const string Site = "site";
    private const string End = DemoHeat.End;

    public async Task SeedAsync(CancellationToken cancellation)
    {
        await using (var db = await contexts.CreateDbContextAsync(cancellation))
        {
            if (await Has(db, End, cancellation)) return;
            if (await db.Sites.AnyAsync(cancellation) && !await Has(db, Site, cancellation)) return;
        }

        var catalogue = DemoCatalogue.Load();
        var hands = new DemoHands(services, time);
        await People(hands, catalogue);
        var equipment = await Equipment(hands, catalogue);
        await DemoLaboratory.Add(hands, cancellation);
        var materials = await DemoYard.Fill(hands, catalogue, cancellation);
        var grades = await DemoGrades.Add(hands, catalogue, cancellation);
        await DemoOrders.Take(hands, grades, cancellation);
        await new DemoHeat(hands, contexts, equipment, materials).Melt(grades["EN-GJS-500-7"], cancellation);
    }

    private static Task<bool> Has(RecordsContext db, string what, CancellationToken cancellation)
    {
        var key = DemoKey.Of(what);
        return db.Entries.AnyAsync(e => e.Key == key, cancellation);
    }

    // The administrator is the first to come, and lets the others in.
    private static async Task People(DemoHands hands, DemoCatalogue catalogue)
    {
        foreach (var person in catalogue.People.OrderByDescending(p => p.Role == Role.Administrator))
        {
            var id = await hands.Do(hands.The<AddPerson>(), Role.Administrator, new(
                DemoKey.Of($"person/{person.UserName}"), hands.Now, person.UserName, person.Name, [person.Role], IsDemo: true) { Password = Password });
            hands.Welcome(person.Role, id, person.Name);
        }
    }

    private static async Task<Dictionary<string, long>> Equipment(DemoHands hands, DemoCatalogue catalogue)
    {
        var site = catalogue.Site;
        var ids = new Dictionary<string, long>();
        await hands.Do(hands.The<SetUpSite>(), Role.Administrator, new(
            DemoKey.Of(Site), hands.Now, site.Code, site.Name, site.TimeZone, site.Currency));
        foreach (var furnace in catalogue.Furnaces)
        {
            ids[furnace.Code] = await hands.Do(hands.The<AddFurnace>(), Role.Administrator, new(
                DemoKey.Of($"furnace/{furnace.Code}"), hands.Now, furnace.Code, furnace.Name, furnace.CapacityKg, furnace.PowerKw, furnace.HighestC));
        }

        foreach (var ladle in catalogue.Ladles)
        {
            ids[ladle.Code] = await hands.Do(hands.The<AddLadle>(), Role.Administrator, new(
                DemoKey.Of($"ladle/{ladle.Code}"), hands.Now, ladle.Code, ladle.Name, DemoYard.Word(ladle.Process), ladle.LargestTreatedKg,
                ladle.PocketKg, ladle.MagnesiumRecoveryPercent, null, ladle.FadePercentPerMinute, ladle.HeatLossKelvinPerMinute, Figures(ladle.Sources)));
            await DemoLadleFigures.Say(hands, ids[ladle.Code], ladle);
        }

        return ids;
    }

    private static string Figures(DemoLadleSources sources) =>
        $"Recovery: {sources.Recovery.Text}. Fade: {sources.Fade.Text}. Heat loss: {sources.HeatLoss.Text}. Fill limit: {sources.Freeboard.Text}. Pocket: {sources.Pocket.Text}";
}
