using System.Globalization;
using MeltShop.Metallurgy;
using MeltShop.Operations.Charging;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Grades;
using MeltShop.Web.Components.Fields;

namespace MeltShop.Web.Pages.Charge;

/// <summary>What a person has chosen for a charge so far, as it was typed; what they left open comes from furnace, grade and yard.</summary>
public sealed class ChargeDraft
{
    /// <summary>No furnace of this trade holds more, kg: beyond it somebody mistyped.</summary>
    internal const double MostKg = 100_000;

    private readonly Dictionary<string, MaterialDraft> materials = [];
    private readonly Dictionary<string, LimitDraft> limits = [];
    private readonly Dictionary<string, double> rightPrices = [];

    public ChargeDraft()
    {
        Furnace = Form.Choice("furnaceId", isRequired: true);
        Grade = Form.Choice("gradeId", isRequired: true);
        MeltKg = Form.Mass("meltKg", 1, MostKg, isRequired: true);
        ToleranceKg = Form.Mass("meltToleranceKg", 0);
        HeelKg = Form.Mass("heelKg", 0);
        Confidence = Form.Quantity("confidencePercent", 50, 99.9);
        Target = Form.Choice("target", isRequired: true).Showing(nameof(ChargeTarget.Furnace));
        Ladle = Form.Choice("ladleId");
        RunsOut = Form.Choice("runsOut");
        Wishes = new WishesDraft(Form);
        Groups = [.. ChargeGroups.Names.Select(name => new GroupDraft(Form, name))];
    }

    public EntryForm Form { get; } = new();

    /// <summary>Codes, as they stand in the address too.</summary>
    public TextEntry Furnace { get; }
    public TextEntry Grade { get; }

    public QuantityEntry MeltKg { get; }
    public QuantityEntry ToleranceKg { get; }
    public QuantityEntry HeelKg { get; }
    public QuantityEntry Confidence { get; }

    /// <summary>Name of the <see cref="ChargeTarget"/>; empty is the furnace iron.</summary>
    public TextEntry Target { get; }

    /// <summary>Id of the ladle that lies between furnace and mould.</summary>
    public TextEntry Ladle { get; }

    /// <summary>Code of the material of which somebody asks what if it runs out; no part of the charge.</summary>
    public TextEntry RunsOut { get; }

    /// <summary>Whether why is shown, where somebody has turned it.</summary>
    public bool? IsWhyTurned { get; set; }

    public WishesDraft Wishes { get; }

    /// <summary>Bins out of reach.</summary>
    public HashSet<string> LeftOutBins { get; } = new(StringComparer.OrdinalIgnoreCase);

    public IReadOnlyList<GroupDraft> Groups { get; }

    public bool IsPoured => Target.Value == nameof(ChargeTarget.Poured);

    /// <summary>The charge as a person makes it; null while the cheapest is wanted.</summary>
    public HandDraft? ByHand { get; private set; }

    /// <summary>Takes a charge into the person's own hands.</summary>
    public void Make(HandDraft made)
    {
        ByHand?.Leave();
        ByHand = made;
    }

    /// <summary>Back to the cheapest.</summary>
    public void Unmake()
    {
        ByHand?.Leave();
        ByHand = null;
    }

    /// <summary>By material, the price of nothing or less of which it was asked and answered that it is right.</summary>
    public IReadOnlyDictionary<string, double> RightPrices => rightPrices;

    public bool IsPriceRight(string code, double pricePerTonne) => rightPrices.TryGetValue(code, out var right) && right.Equals(pricePerTonne);

    public void PriceIsRight(string code, double pricePerTonne) => rightPrices[code] = pricePerTonne;

    public MaterialDraft Material(string code) =>
        materials.TryGetValue(code, out var draft) ? draft : materials[code] = new MaterialDraft(Form, code);

    public LimitDraft Limit(string quantity) =>
        limits.TryGetValue(quantity, out var draft) ? draft : limits[quantity] = new LimitDraft(Form, quantity);

    /// <summary>The chosen furnace, named by its code or, in a link from another page, by its id.</summary>
    public ChargeFurnaceView? FurnaceIn(ChargeView view) => view?.Furnaces.FirstOrDefault(
        furnace => furnace.Code == Furnace.Value || furnace.Id.ToString(CultureInfo.InvariantCulture) == Furnace.Value);

    /// <summary>A full furnace is the usual melt: it is put into the empty field, where it can be seen and changed.</summary>
    public void OfferAFullFurnace(ChargeFurnaceView furnace)
    {
        ArgumentNullException.ThrowIfNull(furnace);
        if (MeltKg.Text.Length == 0) MeltKg.Showing(furnace.CapacityKg);
    }

    public GradeView? GradeIn(ChargeView view) => view?.Grades.FirstOrDefault(grade => grade.Code == Grade.Value);

    /// <summary>The choice; null while something is missing or cannot be read, which its field says.</summary>
    public ChargeChoice? Choice(ChargeView view) =>
        FurnaceIn(view) is { } furnace && GradeIn(view) is { } grade && Fields.All(field => field.Standing is null)
            ? new ChargeChoice(
                furnace.Id, grade.Id, MeltKg.Needed, ToleranceKg.Value ?? 0, HeelKg.Value,
                [.. materials.Values.Select(draft => draft.Choice()).OfType<MaterialChoice>()],
                [.. limits.Values.Select(draft => draft.Choice()).OfType<LimitChoice>()],
                Confidence.Value ?? 50)
            {
                Target = IsPoured ? ChargeTarget.Poured : ChargeTarget.Furnace,
                LadleId = IsPoured && long.TryParse(Ladle.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var ladle) ? ladle : null,
                Groups = [.. Groups.Select(draft => draft.Choice()).OfType<GroupChoice>()],
                Wishes = Wishes.Choice(),
                LeftOutBins = [.. LeftOutBins.Order(StringComparer.Ordinal)],
                ByHand = ByHand?.Choice(),
            }
            : null;

    /// <summary>What keeps it from being a choice once furnace and grade are chosen: an empty field that is needed says nothing by itself.</summary>
    public IReadOnlyList<Finding> Standing(ChargeView view) =>
        FurnaceIn(view) is null || GradeIn(view) is null ? [] : [.. Fields.Select(field => field.Standing).OfType<Finding>()];

    private IEnumerable<FieldEntry> Fields =>
    [
        Furnace, Grade, MeltKg, ToleranceKg, HeelKg, Confidence, Target, Ladle,
        .. Wishes.Fields, .. Groups.SelectMany(draft => draft.Fields), .. ByHand?.Fields ?? [],
        .. materials.Values.SelectMany(draft => draft.Fields), .. limits.Values.SelectMany(draft => draft.Fields),
    ];
}
