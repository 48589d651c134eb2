using MeltShop.Records.Laboratory;
using MeltShop.Records.Ladles;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Records.Reading.Waiting;

/// <summary>A ladle whose castings nobody has let go yet.</summary>
/// <param name="Since">When it came into its state.</param>
/// <param name="Sampled">When the sample of its last metal was taken; null where there is none.</param>
internal sealed record OpenLadle(
    long Id, long HeatId, string HeatNumber, string GradeCode, int Ordinal, TreatedLadleState State, DateTimeOffset Since, DateTimeOffset? Sampled)
{
    private static readonly IReadOnlyList<TreatedLadleState> Open =
        [TreatedLadleState.Prepared, TreatedLadleState.Tapped, TreatedLadleState.Pouring, TreatedLadleState.Held];

    public WaitingRow? Waiting => State switch
    {
        TreatedLadleState.Prepared => Row(WaitingFor.Tap, Since),
        TreatedLadleState.Tapped => Row(WaitingFor.ReactionEnd, Since),
        TreatedLadleState.Pouring when Sampled is null => Row(WaitingFor.LastMetal, Since),
        TreatedLadleState.Pouring => Row(WaitingFor.Decision, Sampled.Value),
        TreatedLadleState.Held => Row(WaitingFor.Decision, Since),
        _ => null,
    };

    public static async Task<IReadOnlyList<OpenLadle>> Load(RecordsContext db, int most, CancellationToken ct)
    {
        var rows = await db.TreatedLadles.Where(l => Open.Contains(l.State)).OrderByDescending(l => l.Id).Take(most).Select(l => new
        {
            l.Id, l.HeatId, l.Ordinal, l.State,
            Heat = db.Heats.Single(h => h.Id == l.HeatId),
            Grade = db.Grades.Single(g => g.Id == db.Heats.Single(h => h.Id == l.HeatId).GradeId).Code,
        }).ToListAsync(ct);
        var ids = rows.Select(r => r.Id).ToList();
        var steps = (await db.LadleSteps.Where(s => ids.Contains(s.TreatedLadleId)).Select(s => new { s.TreatedLadleId, s.ObservedAt }).ToListAsync(ct))
            .GroupBy(s => s.TreatedLadleId).ToDictionary(g => g.Key, g => g.Max(s => s.ObservedAt));
        var sampled = (await db.InForce<Sample>().Where(s => s.TreatedLadleId != null && ids.Contains(s.TreatedLadleId.Value) && s.Kind == SampleKind.LastMetal)
                .Select(s => new { Ladle = s.TreatedLadleId!.Value, s.ObservedAt }).ToListAsync(ct))
            .GroupBy(s => s.Ladle).ToDictionary(g => g.Key, g => g.Max(s => s.ObservedAt));
        return
        [
            .. rows.Select(r => new OpenLadle(
                r.Id, r.HeatId, r.Heat.Number, r.Grade, r.Ordinal, r.State, steps.TryGetValue(r.Id, out var at) ? at : r.Heat.StartedAt,
                sampled.TryGetValue(r.Id, out var taken) ? taken : null)),
        ];
    }

    private WaitingRow Row(WaitingFor what, DateTimeOffset since) => new(what, HeatId, Id, HeatNumber, GradeCode, Ordinal, since);
}
