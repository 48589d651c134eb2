using MeltShop.Metallurgy;
using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Sites;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Sites;

/// <summary>Chooses the units in which the whole shop reads and types masses and temperatures. What is recorded stays in kg and °C.</summary>
public sealed class ChooseUnits(Recorder recorder, TimeProvider time) : Operation<ChooseUnits.Command, long>(recorder, time)
{
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, MassUnit Mass, TemperatureUnit Temperature) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Administrator];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Choice("mass", command.Mass);
        fields.Choice("temperature", command.Temperature);
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var site = await writing.Db.Sites.SingleOrDefaultAsync(cancellation);
        if (site is null) return Refuse("", "site.missing");
        var isOther = command.Temperature != (site.TemperatureUnit ?? TemperatureUnit.Celsius);
        // The text of a draft is read in the unit of the day on which it is handed in: only figures of cups are drafts with a temperature.
        if (isOther && await writing.Db.Drafts.AnyAsync(d => d.Field.StartsWith("figures."), cancellation)) return Refuse("temperature", "units.drafts");

        (site.MassUnit, site.TemperatureUnit) = (command.Mass, command.Temperature);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(site.Id, new ChangeNotice(ChangeKind.Site, site.Id));
    }
}
