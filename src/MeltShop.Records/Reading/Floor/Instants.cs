using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Floor;

/// <summary>When something happened to a heat or a ladle.</summary>
internal sealed record Instant
{
    public required long Subject { get; init; }

    public required DateTimeOffset At { get; init; }
}

internal static class Instants
{
    /// <summary>The latest instant of each subject.</summary>
    public static async Task<IReadOnlyDictionary<long, DateTimeOffset>> Latest(this IQueryable<Instant> instants, CancellationToken ct) =>
        await instants.GroupBy(i => i.Subject).Select(g => new { g.Key, At = g.Max(i => i.At) }).ToDictionaryAsync(g => g.Key, g => g.At, ct);

    public static DateTimeOffset? At(this IReadOnlyDictionary<long, DateTimeOffset> latest, long subject) =>
        latest.TryGetValue(subject, out var at) ? at : null;
}
