using MeltShop.Operations;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Heats;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Components.Entries;

/// <summary>A temperature of the bath, or of a treated ladle.</summary>
public sealed class TemperatureEntry : TypedEntry<long>
{
    public TemperatureEntry()
    {
        Degrees = Form.Temperature("temperatureC", FieldCheck.LowestC, FieldCheck.HighestC, isRequired: true);
        Minutes = MinutesAgo.Field(Form);
    }

    public override string Operation => nameof(RecordTemperature);

    public QuantityEntry Degrees { get; }

    public QuantityEntry Minutes { get; }

    protected override Task<Outcome<long>> Run(IServiceProvider services, EntryMade made) => services.GetRequiredService<RecordTemperature>()
        .Run(made.By, new(made.Key, Minutes.Before(made.ObservedAt), Id("heatId"), About.ContainsKey("treatedLadleId") ? Id("treatedLadleId") : null, Degrees.Needed));
}
