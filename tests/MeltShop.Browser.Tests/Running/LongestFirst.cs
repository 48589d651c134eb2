using Xunit.Sdk;
using Xunit.v3;

[assembly: TestCollectionOrderer(typeof(MeltShop.Browser.Tests.Running.LongestFirst))]

namespace MeltShop.Browser.Tests.Running;

/// <summary>What takes longest begins first, or it runs on at the end beside cores that have nothing left to do.</summary>
public sealed class LongestFirst : ITestCollectionOrderer
{
    private static readonly string[] Long =
        [nameof(DemoAppCollection), nameof(LookTests), nameof(StatesTests), nameof(FormsTests), nameof(EntryTests), nameof(Killing.AppKillTests), nameof(UnitsTests), nameof(Ladles.PouringStoryTests)];

    public IReadOnlyCollection<TTestCollection> OrderTestCollections<TTestCollection>(IReadOnlyCollection<TTestCollection> testCollections)
        where TTestCollection : ITestCollection => [.. testCollections.OrderBy(Place)];

    private static int Place<TTestCollection>(TTestCollection collection)
        where TTestCollection : ITestCollection
    {
        var place = Array.FindIndex(Long, name => collection.TestCollectionDisplayName.Contains($".{name} ", StringComparison.Ordinal));
        return place < 0 ? Long.Length : place;
    }
}
