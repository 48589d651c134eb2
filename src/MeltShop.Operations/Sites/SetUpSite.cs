using MeltShop.Operations.Checking;
using MeltShop.Records.People;
using MeltShop.Records.Sites;
using MeltShop.Records.Writing;
using Microsoft.EntityFrameworkCore;

namespace MeltShop.Operations.Sites;

/// <summary>Names the one site of this installation; done once.</summary>
public sealed class SetUpSite(Recorder recorder, TimeProvider time) : Operation<SetUpSite.Command, long>(recorder, time)
{
    /// <param name="Code">First part of the heat numbers: letters and digits.</param>
    /// <param name="TimeZone">IANA zone.</param>
    /// <param name="Currency">ISO 4217.</param>
    /// <param name="Mass">In what the shop weighs; null: nobody chose, so kg.</param>
    /// <param name="Temperature">In what it says a temperature; null: nobody chose, so °C.</param>
    public sealed record Command(
        Guid EntryKey,
        DateTimeOffset ObservedAt,
        string Code,
        string Name,
        string TimeZone,
        string Currency,
        MassUnit? Mass = null,
        TemperatureUnit? Temperature = null) : Operations.Command(EntryKey, ObservedAt);

    public override IReadOnlyList<string> Roles { get; } = [Role.Administrator];

    protected override void Check(Command command, FieldCheck fields)
    {
        fields.Text("code", command.Code, 10);
        if (command.Code?.All(char.IsAsciiLetterOrDigit) == false) fields.Add("code", "code.letters");
        Check(fields, command.Name, command.TimeZone, command.Currency);
        if (command.Mass is { } mass) fields.Choice("mass", mass);
        if (command.Temperature is { } temperature) fields.Choice("temperature", temperature);
    }

    internal static void Check(FieldCheck fields, string name, string? timeZone, string? currency)
    {
        fields.Text("name", name);
        if (!TimeZoneInfo.TryFindSystemTimeZoneById(timeZone ?? "", out _)) fields.Add("timeZone", "timeZone.unknown");
        if (currency is not { Length: 3 } letters || !letters.All(char.IsAsciiLetterUpper)) fields.Add("currency", "currency.unknown");
    }

    protected override async Task<Written<long>> Write(Writing writing, Command command, CancellationToken cancellation)
    {
        if (await writing.Db.Sites.AnyAsync(cancellation)) return Refuse("code", "site.exists");

        var site = new Site
        {
            Id = Site.OnlyId, Code = command.Code, Name = command.Name, TimeZone = command.TimeZone, Currency = command.Currency,
            MassUnit = command.Mass, TemperatureUnit = command.Temperature,
        };
        writing.Db.Add(site);
        await writing.Db.SaveChangesAsync(cancellation);
        return Done(site.Id, new ChangeNotice(ChangeKind.Site, site.Id));
    }
}
