using MeltShop.Metallurgy.Pouring;
using MeltShop.Metallurgy.Treatment;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.JointPours;

/// <summary>A pouring furnace or a moving trough that is topped up with treated iron while it fades: what if. What is really poured over is recorded at the ladle that it comes from.</summary>
public sealed partial class ToppingUp
{
    private readonly EntryForm form = new();
    private readonly List<TopUpDraft> topUps = [];
    private readonly QuantityEntry kg, mg, mgPlusMinus, fade, fadePlusMinus, rate, floor;

    public ToppingUp()
    {
        (kg, mg) = (form.Mass("kg", 1, 100_000, isRequired: true), form.Quantity("mgPercent", 0, 0.2, isRequired: true));
        (fade, rate) = (form.Quantity("fade", 0, 0.01, isRequired: true), form.Mass("pourKgPerMinute", 0, 10_000, isRequired: true));
        (mgPlusMinus, fadePlusMinus) = (form.Quantity("mgPlusMinus", 0, 0.1), form.Quantity("fadePlusMinus", 0, 0.01));
        floor = form.Quantity("mgFloorPercent", 0.001, 0.2, isRequired: true);
        Add();
    }

    /// <summary>Null until all of it is filled in.</summary>
    private PouringBath? Bath => kg.Value is { } iron && mg.Value is { } percent && fade.Value is { } loss && rate.Value is { } poured && floor.Value is { } least
        ? new(iron, percent, new Fade.Linear(loss), poured, least) : null;

    private IEnumerable<TopUp> TopUps => topUps.Select(t => t.Read()).OfType<TopUp>();

    private IEnumerable<TopUpBand> TopUpBands => topUps.Select(t => t.ReadBand()).OfType<TopUpBand>();

    private PouringBathBand Band(PouringBath bath) => new(
        bath.Kg, MagnesiumRange.About(bath.MgPercent, mgPlusMinus.Value ?? 0), Linear(fade.Value + (fadePlusMinus.Value ?? 0)), Linear(fade.Value - (fadePlusMinus.Value ?? 0)),
        bath.PourKgPerMinute, bath.FloorPercent);

    private static Fade.Linear Linear(double? percentPerMinute) => new(Math.Max(0, percentPerMinute ?? 0));

    private void Add() => topUps.Add(new(form, topUps.Count));
}

/// <summary>One topping up as it is typed.</summary>
public sealed class TopUpDraft(EntryForm form, int number)
{
    public int Number => number;
    public QuantityEntry Minute { get; } = form.Quantity($"topUps[{number}].minute", 0, 1440);
    public QuantityEntry Kg { get; } = form.Mass($"topUps[{number}].kg", 0.1, 100_000);
    public QuantityEntry Mg { get; } = form.Quantity($"topUps[{number}].mgPercent", 0, 0.2);

    public QuantityEntry PlusMinus { get; } = form.Quantity($"topUps[{number}].mgPlusMinus", 0, 0.1);

    /// <summary>The same as <see cref="Read"/>, as a band.</summary>
    public TopUpBand? ReadBand() => Read() is { } one ? new(one.Minute, one.Kg, MagnesiumRange.About(one.MgPercent, PlusMinus.Value ?? 0)) : null;

    /// <summary>Null until it is filled in.</summary>
    public TopUp? Read() => Minute.Value is { } minute && Kg.Value is { } kg && Mg.Value is { } mg ? new(minute, kg, mg) : null;
}
