using System.Globalization;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Records.Reading.Yard;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>What was typed for the next ladle; what the grade, the bath and the last reading say stands there from the start.</summary>
public sealed class PocketDraft
{
    private bool isFilled;
    private (long? LadleId, string Cover, string Rate) coverOffered = (null, "", "");

    public PocketDraft()
    {
        Ladle = Form.Choice("ladleId", isRequired: true);
        PlannedKg = Form.Mass("plannedKg", 0, 100_000, isRequired: true);
        TemperatureC = Form.Temperature("temperatureC", 1100, 1700, isRequired: true);
        BaseSulphur = Form.Quantity("baseSulphurPercent", 0, 1);
        TargetMg = Form.Quantity("targetMgPercent", 0, 0.2);
        MgFloor = Form.Quantity("mgFloorPercent", 0, 0.2);
        Minutes = Form.Quantity("minutesToLastMould", 0, 120);
        Alloy = Form.Choice("alloyMaterialId");
        Inoculant = Form.Choice("inoculantMaterialId", isRequired: true);
        InoculantRate = Form.Quantity("inoculantRatePercent", 0, 5, isRequired: true);
        Cover = Form.Choice("coverMaterialId");
        CoverRate = Form.Quantity("coverRatePercent", 0, 5);
        StreamRate = Form.Quantity("streamRatePercent", 0, 1);
        MouldRate = Form.Quantity("mouldRatePercent", 0, 1);
        SectionMm = Form.Quantity("sectionMm", 0, 5000);
        Pearlite = Form.Choice("pearliteMaterialId");
        BagKg = Form.Mass("bagKg", 0.1, 2000);
        AlloyKg = Form.Mass("alloyKg", 0, 5000);
        (AlloyLot, CoverLot, InoculantLot, PearliteLot) = (Form.Words("alloyLot"), Form.Words("coverLot"), Form.Words("inoculantLot"), Form.Words("pearliteLot"));
    }

    public EntryForm Form { get; } = new();
    public TextEntry Ladle { get; }
    public QuantityEntry PlannedKg { get; }
    public QuantityEntry TemperatureC { get; }
    public QuantityEntry BaseSulphur { get; }
    public QuantityEntry TargetMg { get; }
    public QuantityEntry MgFloor { get; }
    public QuantityEntry Minutes { get; }
    public TextEntry Alloy { get; }
    public TextEntry Inoculant { get; }
    public QuantityEntry InoculantRate { get; }
    public TextEntry Cover { get; }
    public QuantityEntry CoverRate { get; }
    public QuantityEntry StreamRate { get; }
    public QuantityEntry MouldRate { get; }
    public TextEntry Pearlite { get; }

    /// <summary>Mass of a bag of the alloy, for whole bags.</summary>
    public QuantityEntry BagKg { get; }

    /// <summary>What the scale, or whole bags, really gave; empty for what the card asks for.</summary>
    public QuantityEntry AlloyKg { get; }

    /// <summary>As it stands on the bag.</summary>
    public TextEntry AlloyLot { get; }

    public TextEntry CoverLot { get; }
    public TextEntry InoculantLot { get; }
    public TextEntry PearliteLot { get; }

    /// <summary>The heaviest section that is poured, mm; empty where nobody says.</summary>
    public QuantityEntry SectionMm { get; }

    /// <summary>What the grade's recipe says from the start.</summary>
    internal IEnumerable<FieldEntry> Recipe => [TargetMg, MgFloor, Alloy, Minutes, Inoculant, InoculantRate];

    internal IEnumerable<FieldEntry> Extra => [Cover, CoverRate, CoverLot, StreamRate, MouldRate, Pearlite, PearliteLot, SectionMm, BagKg, AlloyKg];

    /// <summary>Whether the grade says less than a card needs, so that a person has to.</summary>
    public bool IsRecipeShort(bool isDuctile) =>
        Inoculant.Value is null || InoculantRate.Value is null || (isDuctile && (TargetMg.Value is null || MgFloor.Value is null || Alloy.Value is null));

    public HashSet<string> Done { get; } = [];
    public long? LadleId => Id(Ladle);
    public long? AlloyId => Id(Alloy);
    public long? InoculantId => Id(Inoculant);
    public long? CoverId => Id(Cover);
    public long? PearliteId => Id(Pearlite);

    public PocketExtras Extras => new()
    {
        AlloyKg = AlloyKg.Value,
        CoverMaterialId = CoverId,
        CoverRatePercent = CoverRate.Value,
        StreamRatePercent = StreamRate.Value,
        MouldRatePercent = MouldRate.Value,
        PearliteMaterialId = PearliteId,
        Lots = new(AlloyLot.Value, CoverLot.Value, InoculantLot.Value, PearliteLot.Value),
        Checks = [.. Done],
    };

    public bool IsChecked(IronFamily family) => !PocketChecks.For(family).Except(Done).Any();

    /// <summary>Null until the card can be worked out.</summary>
    public PocketChoice? Choice => PlannedKg.Value is { } kg && TemperatureC.Value is { } temperature && InoculantRate.Value is { } rate
        ? new(kg, temperature, BaseSulphur.Value, TargetMg.Value, MgFloor.Value, Minutes.Value, rate) { Extras = Extras } : null;

    /// <summary>As the box says: it may be told twice.</summary>
    public void Tick(string check, bool isTicked)
    {
        if (isTicked) Done.Add(check);
        else Done.Remove(check);
    }

    /// <summary>Once: what a person typed is not written over by a later reading of the page.</summary>
    public void Fill(LadleView view)
    {
        if (isFilled || view.Ladles.Count == 0 || view.LastBath is null) return;
        isFilled = true;
        var recipe = view.Grade.Recipe;
        Ladle.Showing(Text(view.Ladles[0].Id));
        TemperatureC.Showing(view.Temperatures.LastOrDefault(t => !t.Origin.IsCorrected)?.TemperatureC);
        BaseSulphur.Showing(view.LastBath.Mean(Element.S));
        TargetMg.Showing(recipe?.TargetMgPercent);
        MgFloor.Showing(recipe?.MgFloorPercent);
        Minutes.Showing(recipe?.MinutesToLastMould);
        Alloy.Showing(Of(view.Alloys, recipe?.TreatmentAlloyCode));
        Inoculant.Showing(Of(view.Inoculants, recipe?.InoculantCode));
        InoculantRate.Showing(recipe?.InoculantRatePercent);
        OfferCover(view);
    }

    /// <summary>For each ladle that is chosen: the recipe's cover where it has a pocket, and none where it has not. What a person put there stands.</summary>
    public void OfferCover(LadleView view)
    {
        if (!isFilled || LadleId == coverOffered.LadleId || (Cover.Text, CoverRate.Text) != (coverOffered.Cover, coverOffered.Rate)) return;
        var isCovered = view.Grade.Family == IronFamily.Ductile && view.Ladles.Any(ladle => ladle.Id == LadleId && LadleProcess.HasPocket(ladle.Process));
        var cover = isCovered ? Of(view.Covers, view.Grade.Recipe?.CoverCode) : null;
        Cover.Showing(cover);
        CoverRate.Showing(cover is null ? null : view.Grade.Recipe?.CoverRatePercent);
        coverOffered = (LadleId, Cover.Text, CoverRate.Text);
    }

    public PreparePocket.Command Command(Guid key, DateTimeOffset observedAt, long heatId) => new(
        key, observedAt, heatId, LadleId!.Value, PlannedKg.Needed, TemperatureC.Needed, BaseSulphur.Value, TargetMg.Value, MgFloor.Value, Minutes.Value,
        AlloyId, Id(Inoculant)!.Value, InoculantRate.Needed) { Extras = Extras };

    public static string Text(long id) => id.ToString(CultureInfo.InvariantCulture);

    private static long? Id(TextEntry entry) => entry.Value is { } text ? long.Parse(text, CultureInfo.InvariantCulture) : null;

    private static string? Of(IEnumerable<MaterialView> materials, string? code) =>
        materials.FirstOrDefault(m => m.Code == code) is { } found ? Text(found.Id) : null;
}
