using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Sites;
using MeltShop.Records.Writing;

namespace MeltShop.Operations.Sites;

/// <summary>
/// Says a figure of a ladle anew, with its band, where it comes from and how sure it is. Cards of before keep what they reckoned with.
/// Answers the new version.
/// </summary>
public sealed class SetLadleFigure(Recorder recorder, TimeProvider time) : Operation<SetLadleFigure.Command, Guid>(recorder, time)
{
    /// <inheritdoc cref="LadleFigureInput"/>
    public sealed record Command(
        Guid EntryKey, DateTimeOffset ObservedAt, long LadleId, Guid Version, LadleFigureKind Kind, double Value, double? Least, double? Most,
        FigureStanding Standing, string Source) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Administrator, Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Choice("kind", command.Kind);
        fields.Choice("standing", command.Standing);
        fields.Text("source", command.Source, 2000);
        Value(command.Kind, "value", command.Value, fields);
        if (command.Least is { } least) Value(command.Kind, "least", least, fields);
        if (command.Most is { } most) Value(command.Kind, "most", most, fields);
        if (command.Least > command.Value) fields.Add("least", "figure.bandBeside");
        if (command.Most < command.Value) fields.Add("most", "figure.bandBeside");
    }

    protected override async Task<Written<Guid>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var ladle = await writing.Db.Ladles.FindAsync([command.LadleId], cancellation);
        if (ladle is null) return Refuse("ladleId", "ladle.unknown");
        if (ladle.Version != command.Version) return Stale(writing, ladle, command.Version);
        if (command.Kind == LadleFigureKind.FillLimit && command.Value > ladle.CapacityKg) return Refuse("value", "ladle.fillOverCapacity", ladle.CapacityKg);
        if (command.Kind == LadleFigureKind.Capacity && command.Value < ladle.FillLimitKg) return Refuse("value", "ladle.fillOverCapacity", command.Value);

        writing.Add(ladle.Id, new(command.Kind, command.Value, command.Least, command.Most, command.Standing, command.Source));
        ladle.Take(command.Kind, command.Value);
        writing.Db.Expect(ladle, command.Version);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(ladle.Version, new ChangeNotice(ChangeKind.Ladle, ladle.Id, ladle.Version));
    }

    private static void Value(LadleFigureKind kind, string path, double value, FieldCheck fields)
    {
        switch (kind)
        {
            case LadleFigureKind.MgRecovery: fields.Percent(path, value); break;
            case LadleFigureKind.LeastPouring or LadleFigureKind.MostTreatment: fields.Temperature(path, value); break;
            case LadleFigureKind.Pocket or LadleFigureKind.HeatLoss or LadleFigureKind.TreatmentLoss: fields.NotNegative(path, value); break;
            default: fields.Positive(path, value); break;
        }
    }
}
