using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Sites;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Sites;

/// <summary>Takes a treatment ladle into the shop, with the figures that its pocket card needs.</summary>
public sealed class AddLadle(Recorder recorder, TimeProvider time) : Operation<AddLadle.Command, long>(recorder, time)
{
    /// <param name="Process">Of the treatment, or <see cref="PouringVessel"/>: that has neither pocket nor recovery.</param>
    /// <param name="FillLimitKg">Greatest mass that leaves the freeboard which the reaction needs.</param>
    /// <param name="PocketKg">What the pocket holds, alloy and cover.</param>
    /// <param name="FiguresSource">Where the figures come from.</param>
    public sealed record Command(
        Guid EntryKey,
        DateTimeOffset ObservedAt,
        string Code,
        string Name,
        string Process,
        double FillLimitKg,
        double PocketKg,
        double MgRecoveryPercent,
        double? RecoveryTemperatureC,
        double MgFadePercentPerMinute,
        double HeatLossKPerMinute,
        string FiguresSource) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Administrator, Role.Metallurgist];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Text("code", command.Code, 60);
        fields.Text("name", command.Name);
        fields.Text("process", command.Process, 60);
        fields.Mass("fillLimitKg", command.FillLimitKg);
        fields.MassOrZero("pocketKg", command.PocketKg);
        fields.Percent("mgRecoveryPercent", command.MgRecoveryPercent);
        if (command.MgRecoveryPercent == 0 && !PouringVessel.Is(command.Process)) fields.Add("mgRecoveryPercent", "yield.zero");
        if (command.RecoveryTemperatureC is { } temperature) fields.Temperature("recoveryTemperatureC", temperature);
        fields.Positive("mgFadePercentPerMinute", command.MgFadePercentPerMinute);
        fields.NotNegative("heatLossKPerMinute", command.HeatLossKPerMinute);
        fields.Text("figuresSource", command.FiguresSource, 2000);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        if (await writing.Db.Ladles.AnyAsync(l => l.Code == command.Code, cancellation)) return Refuse("code", "code.taken", command.Code);

        var ladle = new Ladle
        {
            Code = command.Code,
            Name = command.Name,
            Process = command.Process,
            FillLimitKg = command.FillLimitKg,
            PocketKg = command.PocketKg,
            MgRecoveryPercent = command.MgRecoveryPercent,
            RecoveryTemperatureC = command.RecoveryTemperatureC,
            MgFadePercentPerMinute = command.MgFadePercentPerMinute,
            HeatLossKPerMinute = command.HeatLossKPerMinute,
            FiguresSource = command.FiguresSource,
        };
        writing.Db.Add(ladle);
        await writing.Db.SaveChangesAsync(cancellation);
        foreach (var (kind, value) in Figures(command)) writing.Add(ladle.Id, new(kind, value, null, null, FigureStanding.Shop, command.FiguresSource));
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(ladle.Id, new ChangeNotice(ChangeKind.Ladle, ladle.Id));
    }

    // A pouring furnace or a trough treats nothing: it has neither a pocket nor a recovery.
    private static IEnumerable<(LadleFigureKind Kind, double Value)> Figures(Command command)
    {
        (LadleFigureKind, double)[] all =
        [
            (LadleFigureKind.FillLimit, command.FillLimitKg), (LadleFigureKind.Pocket, command.PocketKg), (LadleFigureKind.MgRecovery, command.MgRecoveryPercent),
            (LadleFigureKind.MgFade, command.MgFadePercentPerMinute), (LadleFigureKind.HeatLoss, command.HeatLossKPerMinute),
        ];
        return PouringVessel.Is(command.Process) ? all.Where(f => f.Item1 is not (LadleFigureKind.Pocket or LadleFigureKind.MgRecovery)) : all;
    }
}
