using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Checking;
using MeltShop.Records.Heats;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Heats;

/// <summary>
/// Records liquid iron that was poured back into the furnace, with the analysis that it brings: that of the ladle it came from, or one
/// that a person says. Answers what is in the furnace by the ledger, kg.
/// </summary>
public sealed class PourBack(Recorder recorder, TimeProvider time) : Operation<PourBack.Command, double>(recorder, time)
{
    /// <param name="TreatedLadleId">The ladle that it came from; null for other iron.</param>
    /// <param name="Percents">Analysis of other iron by element symbol.</param>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long HeatId, long? TreatedLadleId, double Kg, IReadOnlyDictionary<string, double>? Percents,
        string Reason) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Melter, Role.Metallurgist, Role.Supervisor];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Mass("kg", command.Kg);
        fields.Text("reason", command.Reason, 500);
        if (command.Percents is { } percents) fields.Analysis("percents", percents.Select(p => (p.Key, p.Value)));
        if (command.TreatedLadleId is null && command.Percents is not { Count: > 0 }) fields.Add("percents", "pourBack.analysisMissing");
    }

    protected override async Task<Written<double>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var db = writing.Db;
        var heat = await db.LockedHeat(command.HeatId, cancellation);
        if (heat is null) return Refuse("heatId", "heat.unknown");
        if (!heat.IsInFurnace()) return Refuse("heatId", "state.wrong", heat.State.ToString());
        var analysis = Analysis.Of((command.Percents ?? new Dictionary<string, double>()).Select(p => KeyValuePair.Create(Element.Parse(p.Key), p.Value)));
        if (await writing.PourBack(heat, command.Kg, command.TreatedLadleId, analysis, command.Reason, cancellation) is { } finding) return Written<double>.Refused(finding);
        var inFurnace = await db.InFurnace(heat.FurnaceId, cancellation);
        ChangeNotice[] notices = [new(ChangeKind.Heat, heat.Id), new(ChangeKind.Furnace, heat.FurnaceId)];
        return Done(
            inFurnace, command.TreatedLadleId is { } ladle ? [.. notices, new(ChangeKind.TreatedLadle, ladle)] : notices);
    }
}
