using MeltShop.Operations.Ladles;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Tests.Ladles;

/// <summary>Two people at two tablets tick moulds off one ladle at once, on both databases: counted are entries, messages and arrivals, no times.</summary>
public sealed class TwoTabletsTests
{
    private const int Each = 6;

    private static CancellationToken Soon => TestContext.Current.CancellationToken;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Moulds_FromTwoTabletsAtOnce_AllStandAndBothHearOfThem(RecordsProvider provider)
    {
        await using var shop = await Shop.Open(provider);
        var ladle = await shop.Poured(await shop.Bath());
        using var leaving = CancellationTokenSource.CreateLinkedTokenSource(Soon);
        leaving.CancelAfter(TimeSpan.FromMinutes(1)); // a message that never comes fails the test
        var notices = shop.Get<ChangeNotices>();
        var tablets = Enumerable.Range(0, 2).Select(_ => Watch(shop, ladle, notices.Listen(leaving.Token))).ToList();

        await Task.WhenAll(Press(shop, shop.Melter, ladle, "A"), Press(shop, shop.Supervisor, ladle, "B"));

        foreach (var tablet in tablets)
        {
            var (seen, messages) = await tablet;
            Assert.Equal(Labels, seen);
            Assert.InRange(messages, 1, 2 * Each); // gathered over 50 ms: never more messages than entries
        }

        await using var db = shop.Db();
        Assert.Equal(2 * Each, await db.PouredMoulds.CountAsync(m => m.TreatedLadleId == ladle.Id, Soon));
    }

    private static List<string> Labels => [.. new[] { "A", "B" }.SelectMany(tablet => Enumerable.Range(1, Each).Select(n => $"{tablet}{n}"))];

    /// <summary>Each mould is sent twice, as after a cut: it is ticked off once.</summary>
    private static async Task Press(Shop shop, Acting who, TreatedLadle ladle, string tablet)
    {
        for (var n = 1; n <= Each; n++)
        {
            var command = new RecordMould.Command(Guid.NewGuid(), shop.Now, ladle.Id, $"{tablet}{n}", 20, 5);
            var sent = await Task.WhenAll(Enumerable.Range(0, 2).Select(_ => Task.Run(() => shop.Get<RecordMould>().Run(who, command, Soon))));
            Assert.All(sent, outcome => Assert.True(outcome.Succeeded, string.Join("; ", outcome.Findings)));
        }
    }

    /// <summary>As a page does: at each message of the ladle it reads again, until all is there. Answers what it saw, and after how many messages.</summary>
    private static async Task<(List<string> Seen, int Messages)> Watch(Shop shop, TreatedLadle ladle, IAsyncEnumerable<IReadOnlyList<ChangeNotice>> bundles)
    {
        var (seen, messages) = (new List<string>(), 0);
        await foreach (var bundle in bundles)
        {
            if (!bundle.Any(n => n.Kind == ChangeKind.TreatedLadle && n.Id == ladle.Id)) continue;
            messages++;
            await using var db = shop.Db();
            seen = await db.InForce<PouredMould>().Where(m => m.TreatedLadleId == ladle.Id).Select(m => m.Label).ToListAsync(Soon);
            if (seen.Count == 2 * Each) break;
        }

        return ([.. seen.Order(StringComparer.Ordinal)], messages);
    }
}
