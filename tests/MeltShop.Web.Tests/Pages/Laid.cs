using System.Collections.Concurrent;

namespace MeltShop.Web.Tests.Pages;

/// <summary>What many tests begin with, kept as it was laid by the first of them.</summary>
internal sealed class Laid
{
    private static readonly ConcurrentDictionary<string, Laid> All = new();

    /// <summary>One lays it, and the others wait.</summary>
    public SemaphoreSlim Turn { get; } = new(1, 1);

    /// <summary>The file of records, the clock as it stood, and what was answered; null before it is laid.</summary>
    public (byte[] Records, DateTimeOffset Clock, object Answer)? Kept { get; set; }

    public static Laid Of(string what) => All.GetOrAdd(what, _ => new());
}
