using MeltShop.Operations.Importing.Taking;
using MeltShop.Operations.Tests.Importing.Corrupted;
using MeltShop.Operations.Tests.Shops;
using MeltShop.Records;
using MeltShop.Records.Importing;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Tests.Importing;

/// <summary>Whatever stops an import on its way, nothing of it stays.</summary>
public sealed class ImportCutTests
{
    private const int Seed = 20261125, Cuts = 12;

    [Theory]
    [MemberData(nameof(Shop.Databases), MemberType = typeof(Shop))]
    public async Task Import_CutAtAnyMoment_IsWholeOrNothing(RecordsProvider provider)
    {
        TestContext.Current.TestOutputHelper!.WriteLine($"seed {Seed}, {Cuts} cuts");
        await using var shop = await Shop.Open(provider);
        var (map, heat) = (await shop.ImportMap(), await shop.Bath());
        var random = new Random(Seed);
        for (var cut = 0; cut < Cuts; cut++)
        {
            var bytes = SampleFiles.Many(200, heat.Number, TimeZoneInfo.ConvertTime(heat.StartedAt, TimeZoneInfo.FindSystemTimeZoneById("Europe/Berlin")).DateTime.AddMinutes(1), first: $"C{cut}-");
            var preview = await shop.Preview(map, bytes);
            var before = await shop.Rows();
            using var stop = new CancellationTokenSource();
            stop.CancelAfter(TimeSpan.FromMilliseconds(random.Next(1, 250)));
            var isDone = false;
            try
            {
                isDone = (await shop.Get<ImportSamples>().Run(shop.Metallurgist, preview.Taking(Guid.NewGuid(), shop.Now, ImportWay.Page, "cut.csv"), stop.Token)).Succeeded;
            }
            catch (Exception fault) when (fault is OperationCanceledException || fault.InnerException is OperationCanceledException)
            {
                // cut
            }

            var after = await shop.Rows();
            Assert.Equal(before["ImportedSamples"] + (isDone ? 200 : 0), after["ImportedSamples"]);
            if (!isDone) Assert.Equal(before, after);
        }

        Assert.Empty((await shop.Get<TrailCheck>().Run(TestContext.Current.CancellationToken)).Faults);
    }
}
