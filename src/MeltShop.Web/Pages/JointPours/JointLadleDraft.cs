using MeltShop.Metallurgy.Pouring;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.JointPours;

/// <summary>One ladle of a joint pour as it is typed; the figures of a ladle that was chosen stand there from then on.</summary>
public sealed class JointLadleDraft
{
    public JointLadleDraft(EntryForm form, int number)
    {
        ArgumentNullException.ThrowIfNull(form);
        Number = number;
        QuantityEntry Quantity(string name, double most, bool isRequired = true, double least = 0) => form.Quantity($"ladles[{number}].{name}", least, most, isRequired);
        Ladle = form.Choice($"ladles[{number}].ladleId");
        Kg = Quantity("kg", 100_000).Of(Dimension.Mass);
        Mg = Quantity("mgPercent", 0.2, isRequired: false);
        Floor = Quantity("mgFloorPercent", 0.2, isRequired: false);
        Fade = Quantity("fade", 0.01, isRequired: false);
        Temperature = Quantity("temperatureC", 1700, least: 1100).Of(Dimension.Temperature);
        Least = Quantity("leastC", 1700, isRequired: false, least: 1000).Of(Dimension.Temperature);
        Loss = Quantity("heatLoss", 50).Of(Dimension.TemperatureDifference);
        Inoculation = Quantity("inoculationMinutes", 120, isRequired: false);
        Treatment = Quantity("treatmentMinutes", 120);
        From = Quantity("pourFrom", 120);
        To = Quantity("pourTo", 120);
    }

    /// <summary>From 0.</summary>
    public int Number { get; }
    public TextEntry Ladle { get; }
    public QuantityEntry Kg { get; }
    public QuantityEntry Mg { get; }
    public QuantityEntry Floor { get; }
    public QuantityEntry Fade { get; }
    public QuantityEntry Temperature { get; }
    public QuantityEntry Least { get; }
    public QuantityEntry Loss { get; }
    public QuantityEntry Inoculation { get; }
    public QuantityEntry Treatment { get; }
    public QuantityEntry From { get; }
    public QuantityEntry To { get; }

    public IEnumerable<FieldEntry> Fields => [Ladle, Kg, Mg, Floor, Fade, Temperature, Least, Loss, Inoculation, Treatment, From, To];

    public void Take(LadleEquipment ladle)
    {
        ArgumentNullException.ThrowIfNull(ladle);
        Fade.Showing(ladle.MgFadePercentPerMinute);
        Loss.Showing(ladle.HeatLossKPerMinute);
        Least.Showing(ladle.LeastPouringC);
        Inoculation.Showing(ladle.InoculationMinutes);
    }

    /// <summary>Null until all that is needed stands there; a ladle with magnesium needs its floor and its fade as well.</summary>
    public JointLadle? Read(string name)
    {
        if (Kg.Value is not > 0 || Temperature.Value is not { } temperature || Loss.Value is not { } loss || Treatment.Value is not { } treatment
            || From.Value is not { } from || To.Value is not { } to || to < from) return null;
        if (Mg.Value is not null && (Floor.Value is not > 0 || Fade.Value is null)) return null;
        return new()
        {
            Name = name, Kg = Kg.Value.Value, MgPercent = Mg.Value, MgFloorPercent = Mg.Value is null ? null : Floor.Value,
            Fade = new Fade.Linear(Fade.Value ?? 0), TemperatureC = temperature, LeastC = Least.Value, HeatLossKPerMinute = loss,
            InoculationMinutes = Inoculation.Value, TreatmentMinutes = treatment, PourFrom = from, PourTo = to,
        };
    }
}
