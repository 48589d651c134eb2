using System.Reflection;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Castings;
using MeltShop.Records.Heats;
using MeltShop.Records.Keeping;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using MeltShop.Records.People;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Correcting;

/// <summary>
/// Every field of a heat and of each fact of it that can be corrected is corrected three times: all values, people, times and reasons stay readable.
/// A field that somebody adds is either corrected here or named with what happens to it instead.
/// </summary>
public sealed class EveryFieldTests
{
    private const string Reckoned = "is reckoned anew by the correction of what it rests on";
    private const string OfTheLadle = "a ladle that was wrong is another fact: this one is corrected to what it was";

    private static readonly string[] Reasons = ["digits swapped", "wrong card", "asked the crane driver"];

    /// <summary>What is not corrected, and what happens instead.</summary>
    private static readonly Dictionary<string, string> Stays = new()
    {
        ["Heat.Id"] = "names the row", ["Heat.Number"] = "is given once, by the app", ["Heat.SiteId"] = "there is one site", ["Heat.PlanId"] = "what it was started from",
        ["Heat.State"] = "follows from its steps", ["Heat.Version"] = "of the row",
        ["Sample.IsMeanOnly"] = "what the instrument sent", ["Sample.CoinOnItsWayId"] = "which coin it was of", ["Sample.Means"] = Reckoned,
        ["Tap.TreatedLadleId"] = OfTheLadle, ["Tap.HeatId"] = "of its ladle", ["Tap.GrossKg"] = "what the scale showed: the mass is corrected", ["Tap.TareKg"] = "what the scale showed: the mass is corrected",
        ["Tap.FromTreatedLadleId"] = OfTheLadle, ["Tap.StartedAt"] = "moves with the tap", ["Tap.MgAfterTreatmentPercent"] = Reckoned, ["Tap.MinutesToFloor"] = Reckoned,
        ["Tap.MgLeastPercent"] = Reckoned, ["Tap.MgMostPercent"] = Reckoned, ["Tap.LeastMinutesToFloor"] = Reckoned,
        ["FurnaceMetal.FurnaceId"] = "goes with its heat", ["FurnaceMetal.HeatId"] = "goes with its weighing", ["FurnaceMetal.Kind"] = "another kind is another fact",
        ["FurnaceMetal.TreatedLadleId"] = OfTheLadle, ["FurnaceMetal.Percents"] = "corrected to nought and poured back anew",
        ["CastingDecision.TreatedLadleId"] = OfTheLadle, ["CastingDecision.TestUnit"] = "a unit is decided about anew", ["CastingDecision.Seen"] = "what was seen then",
        ["CastingDecision.WasSigned"] = "whether the person signed", ["CastingDecision.GradeId"] = "a downgrade is decided anew", ["CastingDecision.ReMarking"] = "a downgrade is decided anew",
        ["CastingDecision.Consent"] = "a downgrade is decided anew", ["CastingDecision.FollowsCorrection"] = "how it came about",
        ["TestPiece.TreatedLadleId"] = OfTheLadle, ["TestPiece.IsWithdrawn"] = "said once: a piece that there was after all is entered anew",
    };

    /// <summary>Facts of a heat that have no correction, and what is done instead.</summary>
    private static readonly Dictionary<Type, string> OtherFacts = new()
    {
        [typeof(HeatStep)] = "the end is corrected at the heat", [typeof(HeatCorrection)] = "is the correction", [typeof(LadleStep)] = "undone by a step",
        [typeof(Heel)] = "follows its heat, or the dip that said it",
        [typeof(BathCorrection)] = "a proposal", [typeof(PocketCard)] = "a proposal", [typeof(MagnesiumDose)] = "dosed anew",
        [typeof(PouredMould)] = "taken back and entered anew", [typeof(LadleRest)] = "taken back and entered anew", [typeof(LadleInoculation)] = "taken back and entered anew",
        [typeof(BurnDecision)] = "decided anew", [typeof(CoinOnItsWay)] = "said to be lost", [typeof(Certificate)] = "issued anew as a revision",
        [typeof(Records.Yard.StockFact)] = "corrected in the yard, or with its weighing",
    };

    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Fact]
    public void Field_OfAHeatOrItsFacts_IsCorrectedHereOrNamedWithWhatHappensInstead()
    {
        var corrected = FieldCorrections.All.Select(c => c.Fact).Append(typeof(Heat)).Distinct().ToList();
        var facts = typeof(Fact).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Fact)) && OfAHeat.Any(name => t.GetProperty(name) is not null)).ToList();

        Assert.Empty(facts.Except(corrected).Except(OtherFacts.Keys));
        var fields = corrected.SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly).Where(p => p.CanWrite).Select(p => $"{t.Name}.{p.Name}")).ToList();
        var known = FieldCorrections.All.Select(c => c.Name).Concat(FieldCorrections.OfTheHeat.Select(f => "Heat." + f.Field)).Concat(Stays.Keys).ToList();
        Assert.Empty(fields.Except(known));
        Assert.DoesNotContain(known.Except(fields), name => !name.EndsWith(nameof(Fact.ObservedAt), StringComparison.Ordinal));
        Assert.All(corrected.Where(t => t != typeof(Heat) && t != typeof(CastingDecision) && t != typeof(TestPiece)), t => Assert.Contains($"{t.Name}.ObservedAt", known));
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Field_CorrectedThreeTimes_KeepsEveryValuePersonTimeAndReason(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var told = await FieldCorrections.Tell(shop);
        foreach (var field in FieldCorrections.All)
        {
            var first = await field.Start(told);
            var id = first;
            for (var n = 0; n < 3; n++)
            {
                shop.Clock.Advance(1);
                id = await field.Correct(told, id, n, Who(shop)[n], Reasons[n]);
                Assert.True(id > 0, $"{field.Name}, {Reasons[n]}");
            }

            var chain = await field.Chain(shop, first);
            Assert.True(chain.Select(f => f.Value).Zip(chain.Skip(1).Select(f => f.Value)).All(pair => pair.First != pair.Second), $"{field.Name}: {string.Join(" | ", chain.Select(f => f.Value))}");
            AllTold(field.Name, [.. chain.Select(f => f.Fact)], shop);
            await OnThePage(shop, told, [.. chain.Select(f => f.Fact)], field.Name);
        }

        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task HeatItself_EachFieldCorrectedThreeTimes_KeepsEveryValuePersonTimeAndReason(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        foreach (var (name, values) in FieldCorrections.OfTheHeat)
        {
            var heat = await FieldCorrections.ClosedHeat(shop);
            var said = await values(shop, heat);
            for (var n = 0; n < 3; n++)
            {
                shop.Clock.Advance(1);
                await FieldCorrections.Correct(shop, heat.Id, name, said[n], Who(shop)[n], Reasons[n]);
            }

            await using var db = shop.Db();
            var rows = await db.HeatCorrections.AsNoTracking().Where(c => c.HeatId == heat.Id).OrderBy(c => c.Id).ToListAsync(Soon);
            object? Value(HeatCorrection row, string former = "") => typeof(HeatCorrection).GetProperty(former + name)!.GetValue(row);
            Assert.Equal([.. said], rows.Select(r => Value(r)));
            Assert.Equal([typeof(Heat).GetProperty(name)!.GetValue(heat), said[0], said[1]], rows.Select(r => Value(r, "Former")));
            Assert.Equal(Reasons, rows.Select(r => r.Reason));
            Assert.Equal(Who(shop).Select(w => w.PersonId), rows.Select(r => r.PersonId));
            Assert.Equal(said[2], typeof(Heat).GetProperty(name)!.GetValue(await shop.Heat(heat.Id)));
            var shown = (await shop.Get<HeatPage>().Load(heat.Id, Soon))!;
            Assert.Equal(Reasons, shown.Timeline.Where(r => r.Kind == TimelineKind.HeatCorrection).Select(r => r.Origin.Reason));
            Assert.Equal(["The melter", "The metallurgist", "The supervisor"], shown.OfItself.Select(c => c.Origin.Person));
        }

        Assert.True((await shop.Get<TrailCheck>().Run(Soon)).Holds);
    }

    private static readonly string[] OfAHeat = ["HeatId", "TreatedLadleId", "SampleId"];

    /// <summary>Three people; who may is another test's question.</summary>
    private static Acting[] Who(Shop shop) => [.. new[] { shop.Melter, shop.Metallurgist, shop.Supervisor }.Select(who => who with { Roles = Role.All })];

    private static void AllTold(string name, IReadOnlyList<Fact> chain, Shop shop)
    {
        Assert.True(chain.Count == 4, name);
        Assert.Equal(Reasons, chain.Skip(1).Select(f => f.Reason));
        Assert.Equal(Who(shop).Select(w => w.PersonId), chain.Skip(1).Select(f => f.PersonId));
        Assert.All(chain.Zip(chain.Skip(1)), pair => Assert.True(pair.Second.EnteredAt > pair.First.EnteredAt, name));
    }

    /// <summary>Each of them stands in the timeline of a heat, with who, when and why; test pieces stand at the castings.</summary>
    private static async Task OnThePage(Shop shop, FieldCorrections.Told told, IReadOnlyList<Fact> chain, string name)
    {
        if (chain[0] is TestPiece) return;
        var rows = new List<TimelineRow>();
        foreach (var heat in told.Heats) rows.AddRange((await shop.Get<HeatPage>().Load(heat, Soon))!.Timeline);
        foreach (var (fact, reason) in chain.Zip(Reasons.Prepend(null)))
        {
            var row = Assert.Single(rows, r => r.Origin.FactId == fact.Id && r.Kind == FieldCorrections.KindOf(fact));
            Assert.True((reason, fact.EnteredAt) == (reason is null ? null : row.Origin.Reason, row.Origin.EnteredAt), name);
        }
    }
}
