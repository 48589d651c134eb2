using System.Globalization;
using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Elements;
using MeltShop.Operations;
using MeltShop.Operations.Checking;
using MeltShop.Operations.Drafts;
using MeltShop.Operations.Laboratory;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Pages.Heats;

namespace MeltShop.Web.Components.Entries;

/// <summary>A coin with its burns: of the bath of a heat, or of the last metal of a ladle.</summary>
public sealed class SampleEntry : TypedEntry<long>
{
    /// <summary>How a coin broke.</summary>
    public const string White = "white", Grey = "grey";

    public SampleEntry(IEnumerable<Element> elements)
    {
        Kind = Form.Choice("kind", isRequired: true).Showing(nameof(SampleKind.Bath));
        Coin = Form.Words("coinNumber");
        Remarks = Form.Words("remarks");
        Minutes = MinutesAgo.Field(Form);
        Instrument = Form.Choice("instrumentId");
        Fracture = Form.Choice("fracture", isRequired: true).Showing(White);
        Figures = FigureFields.On(Form);
        Burns = new SampleDraft(Form, elements);
    }

    public override string Operation => nameof(RecordSample);

    public TextEntry Kind { get; }

    public TextEntry Coin { get; }

    public TextEntry Remarks { get; }

    public QuantityEntry Minutes { get; }

    public SampleDraft Burns { get; }

    /// <summary>What measured it; empty where nobody says.</summary>
    public TextEntry Instrument { get; }

    /// <summary><see cref="White"/> or <see cref="Grey"/>.</summary>
    public TextEntry Fracture { get; }

    /// <summary>Of a cup or a wedge.</summary>
    public IReadOnlyDictionary<FigureQuantity, QuantityEntry> Figures { get; }

    /// <summary>The kind that is chosen.</summary>
    public SampleKind Chosen => Enum.TryParse<SampleKind>(Kind.Value, out var chosen) ? chosen : SampleKind.Bath;

    /// <summary>The instrument sends a mean: one row, and no scatter of burns.</summary>
    public bool IsMeanOnly => About.GetValueOrDefault("meanOnly") == bool.TrueString;

    public override string? DraftSubject =>
        CoinId is { } coin ? Operations.Drafts.DraftSubject.Coin(coin)
        : TreatedLadleId is { } ladle ? Operations.Drafts.DraftSubject.LastMetal(ladle)
        : About.ContainsKey("heatId") ? Operations.Drafts.DraftSubject.BathSample(Id("heatId"))
        : null;

    /// <summary>Kinds of sample of a treated ladle.</summary>
    public static IReadOnlyList<SampleKind> OfTheLadle { get; } = [SampleKind.LastMetal, SampleKind.AfterTreatment, SampleKind.LadleBase];

    private long? CoinId => About.ContainsKey("coinId") ? Id("coinId") : null;

    private long? TreatedLadleId => About.ContainsKey("treatedLadleId") ? Id("treatedLadleId") : null;

    /// <summary>Says that it is the result of a coin that was sent ahead.</summary>
    public void Answers(CoinView coin)
    {
        ArgumentNullException.ThrowIfNull(coin);
        Belongs("coinId", coin.Id);
        Belongs("takenAt", coin.Origin.ObservedAt.UtcTicks);
        Kind.Showing(coin.Kind.ToString());
        Coin.Showing(coin.CoinNumber);
        Remarks.Showing(coin.Remarks);
    }

    /// <inheritdoc/>
    public override FieldEntry? Field(string path) => Burns.CellAt(path) ?? base.Field(path);

    protected override IEnumerable<Finding> Check() =>
        TreatedLadleId is not null && !OfTheLadle.Contains(Chosen) ? [new("kind", "sample.otherOfLadle")] : HasFigures ? [] : Burns.Check();

    private bool HasFigures => SampleKinds.OfFigures.Contains(Chosen);

    /// <summary>A coin that was sent ahead was taken when that was said, however long its result takes; unless somebody says otherwise here.</summary>
    private DateTimeOffset TakenAt(EntryMade made) => Minutes.Value is null && About.ContainsKey("takenAt") ? new(Id("takenAt"), TimeSpan.Zero) : Minutes.Before(made.ObservedAt);

    protected override Task<Outcome<long>> Run(IServiceProvider services, EntryMade made) => services.GetRequiredService<RecordSample>().Run(made.By, new(
        made.Key, TakenAt(made), Id("heatId"), TreatedLadleId, Chosen, HasFigures ? [] : Burns.Inputs(), Coin.Value, Remarks.Value,
        long.TryParse(Instrument.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var instrument) ? instrument : null,
        !HasFigures && Fracture.Value == Grey, !HasFigures && IsMeanOnly, HasFigures ? FigureFields.Inputs(Figures) : null, CoinId) { DraftSubject = DraftSubject });
}
