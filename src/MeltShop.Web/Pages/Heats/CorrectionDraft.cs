using System.Globalization;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Heats;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Heats;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Components.Entries;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Charge;

namespace MeltShop.Web.Pages.Heats;

/// <summary>The fields of a correction, filled with what stands there; a field that the fact does not have is null.</summary>
public sealed class CorrectionDraft
{
    private const double TwoDays = 2880;

    private CorrectionDraft(bool hasTime = true)
    {
        Reason = Form.Words("reason", isRequired: true);
        if (hasTime) Earlier = Form.Quantity("happenedAt", -TwoDays, TwoDays);
    }

    public EntryForm Form { get; } = new();
    public TextEntry Reason { get; }
    public QuantityEntry? Earlier { get; }
    public TextEntry? Heat { get; private init; }
    public TextEntry? Ladle { get; private init; }
    public TextEntry? Material { get; private init; }
    public TextEntry? Lot { get; private init; }
    public TextEntry? IntoBath { get; private init; }
    public QuantityEntry? Kg { get; private init; }
    public QuantityEntry? PlusMinus { get; private init; }
    public QuantityEntry? Degrees { get; private init; }
    public TextEntry? SampleKind { get; private init; }
    public TextEntry? Coin { get; private init; }
    public TextEntry? Remarks { get; private init; }
    public TextEntry? Fracture { get; private init; }

    /// <summary>What measured a sample; one that is known can be another, and not be taken away.</summary>
    public TextEntry? Instrument { get; private init; }

    public TextEntry? Verdict { get; private init; }

    /// <summary>Of a cup or a chill wedge.</summary>
    public IReadOnlyList<KeyValuePair<FigureQuantity, QuantityEntry>> Figures { get; private init; } = [];

    /// <summary>Where it was a release.</summary>
    public TextEntry? Password { get; private init; }

    public SampleDraft? Burns { get; private init; }

    public static CorrectionDraft Of(HeatView heat, TimelineRow row)
    {
        ArgumentNullException.ThrowIfNull(heat);
        ArgumentNullException.ThrowIfNull(row);
        return row.Kind switch
        {
            TimelineKind.Weighing => Weighing(heat, heat.Weighings.First(fact => fact.Origin == row.Origin)),
            TimelineKind.Temperature => Temperature(heat, heat.Temperatures.First(fact => fact.Origin == row.Origin)),
            TimelineKind.Sample => Sample(heat.Samples.First(fact => fact.Origin == row.Origin)),
            TimelineKind.Tap => Tap(heat.Ladles.SelectMany(ladle => ladle.Taps).First(fact => fact.Origin == row.Origin)),
            TimelineKind.Metal => Metal(heat.Metal.First(fact => fact.Origin == row.Origin)),
            _ => Decision(heat.Ladles.SelectMany(ladle => ladle.Decisions).First(fact => fact.Origin == row.Origin)),
        };
    }

    public static string Id(long id) => id.ToString(CultureInfo.InvariantCulture);

    private static CorrectionDraft Weighing(HeatView heat, WeighingView fact)
    {
        var draft = new CorrectionDraft();
        return draft.With(
            heat: draft.Choice("heatId", Id(heat.Heat.Id)), material: draft.Choice("materialId", Id(fact.MaterialId)),
            intoBath: draft.Choice("intoBath", fact.IntoBath.ToString()), kg: draft.Mass("kg", fact.Kg),
            lot: draft.Form.Words("lot").Showing(fact.Lot));
    }

    private static CorrectionDraft Temperature(HeatView heat, TemperatureView fact)
    {
        var draft = new CorrectionDraft();
        return draft.With(
            heat: draft.Choice("heatId", Id(heat.Heat.Id)), ladle: draft.Optional("treatedLadleId", fact.TreatedLadleId),
            degrees: draft.Form.Temperature("temperatureC", FieldCheck.LowestC, FieldCheck.HighestC, isRequired: true).Showing(fact.TemperatureC));
    }

    private static CorrectionDraft Sample(SampleView fact)
    {
        var hasFigures = SampleKinds.OfFigures.Contains(fact.Kind);
        var draft = new CorrectionDraft();
        return draft.With(
            heat: draft.Choice("heatId", Id(fact.HeatId)), ladle: draft.Optional("treatedLadleId", fact.TreatedLadleId),
            kind: draft.Choice("kind", fact.Kind.ToString()), coin: draft.Form.Words("coinNumber").Showing(fact.CoinNumber),
            remarks: draft.Form.Words("remarks").Showing(fact.Remarks), fracture: hasFigures ? null : draft.Choice("greyFracture", fact.GreyFracture.ToString()), burns: hasFigures ? null : SampleDraft.Of(draft.Form, fact),
            instrument: draft.Form.Choice("instrumentId", isRequired: fact.Instrument is not null).Showing(fact.Instrument is { } measured ? Id(measured.Id) : null),
            figures: hasFigures ? FiguresOf(draft, fact) : null);
    }

    /// <summary>The figures as they should read; null where they stand as they were. One that was right keeps its text.</summary>
    public IReadOnlyList<FigureInput>? ChangedFigures(SampleView fact)
    {
        ArgumentNullException.ThrowIfNull(fact);
        var figures = FigureFields.Inputs(Figures);
        if (figures.Select(f => (f.Quantity, f.Value)).Order().SequenceEqual(fact.Figures.Select(f => (f.Quantity, f.Value)).Order())) return null;
        return [.. figures.Select(f => fact.Figures.FirstOrDefault(was => was.Quantity == f.Quantity && was.Value == f.Value) is { } same ? f with { InstrumentText = same.InstrumentText } : f)];
    }

    private static List<KeyValuePair<FigureQuantity, QuantityEntry>> FiguresOf(CorrectionDraft draft, SampleView fact)
    {
        var figures = FigureFields.On(draft.Form).Of(fact.Kind).ToList();
        foreach (var (quantity, field) in figures) field.Showing(fact.Figure(quantity));
        return figures;
    }

    private static CorrectionDraft Tap(Records.Reading.Ladles.TapView fact)
    {
        var draft = new CorrectionDraft();
        return draft.With(
            kg: draft.Mass("kg", fact.Kg),
            degrees: draft.Form.Temperature("temperatureC", FieldCheck.LowestC, FieldCheck.HighestC).Showing(fact.TemperatureC));
    }

    private static CorrectionDraft Metal(MetalView fact)
    {
        var draft = new CorrectionDraft();
        var isDip = fact.Kind == FurnaceMetalKind.Dipped;
        return draft.With(
            kg: draft.Mass("kg", isDip ? fact.LevelKg : Math.Abs(fact.Kg)),
            plusMinus: isDip ? draft.Form.Mass("plusMinusKg", 0, ChargeDraft.MostKg).Showing(fact.PlusMinusKg) : null);
    }

    private static CorrectionDraft Decision(Records.Reading.Ladles.CastingDecisionView fact)
    {
        var draft = new CorrectionDraft(hasTime: false);
        return new(draft) { Verdict = draft.Choice("verdict", fact.Verdict.ToString()), Password = draft.Form.Words("password") };
    }

    private TextEntry Choice(string path, string value) => Form.Choice(path, isRequired: true).Showing(value);

    private TextEntry Optional(string path, long? id) => Form.Choice(path).Showing(id is { } known ? Id(known) : "");

    private QuantityEntry Mass(string path, double? kg) => Form.Mass(path, 0, ChargeDraft.MostKg, isRequired: true).Showing(kg);

    private CorrectionDraft With(
        TextEntry? heat = null, TextEntry? ladle = null, TextEntry? material = null, TextEntry? intoBath = null, QuantityEntry? kg = null,
        QuantityEntry? plusMinus = null, QuantityEntry? degrees = null, TextEntry? kind = null, TextEntry? coin = null, TextEntry? remarks = null,
        TextEntry? verdict = null, TextEntry? fracture = null, SampleDraft? burns = null, TextEntry? instrument = null,
        IReadOnlyList<KeyValuePair<FigureQuantity, QuantityEntry>>? figures = null, TextEntry? lot = null) => new(this)
        {
            Heat = heat, Ladle = ladle, Material = material, Lot = lot, IntoBath = intoBath, Kg = kg, PlusMinus = plusMinus, Degrees = degrees, SampleKind = kind,
            Coin = coin, Remarks = remarks, Verdict = verdict, Fracture = fracture, Burns = burns, Instrument = instrument, Figures = figures ?? [],
        };

    private CorrectionDraft(CorrectionDraft begun) => (Form, Reason, Earlier) = (begun.Form, begun.Reason, begun.Earlier);
}
