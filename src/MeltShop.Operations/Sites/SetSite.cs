using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Sites;

/// <summary>
/// Puts right what was said of the shop: its name, its zone, and its currency as long as nothing has a price. Its code begins the numbers of
/// its heats and stays.
/// </summary>
public sealed class SetSite(Recorder recorder, TimeProvider time) : Operation<SetSite.Command, long>(recorder, time)
{
    /// <param name="Name">As it stands on certificates.</param>
    /// <param name="TimeZone">IANA zone.</param>
    /// <param name="Currency">ISO 4217.</param>
    public sealed record Said(string Name, string TimeZone, string Currency);

    /// <param name="Seen">What stood there, so that nobody overwrites another without a word.</param>
    public sealed record Command(Guid EntryKey, DateTimeOffset ObservedAt, Said Seen, Said Site) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Administrator];

    protected override void Check(Command command, FieldCheck fields) => SetUpSite.Check(fields, command.Site.Name, command.Site.TimeZone, command.Site.Currency);

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        var site = await writing.Db.Sites.SingleOrDefaultAsync(cancellation);
        if (site is null) return Refuse("", "site.missing");
        if (new Said(site.Name, site.TimeZone, site.Currency) != command.Seen) return Stale();
        var isPriced = await writing.Db.Materials.AnyAsync(cancellation) || await writing.Db.ChargeRules.AnyAsync(cancellation);
        if (isPriced && site.Currency != command.Site.Currency) return Refuse("currency", "currency.used", site.Currency);

        (site.Name, site.TimeZone, site.Currency) = (command.Site.Name, command.Site.TimeZone, command.Site.Currency);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(site.Id, new ChangeNotice(ChangeKind.Site, site.Id));
    }
}
