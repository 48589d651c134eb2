using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Ladles;

namespace MeltShop.Web.Components.Entries;

/// <summary>What the entry path takes, by the name of its operation.</summary>
public static class EntryKinds
{
    private static readonly Dictionary<string, Func<TypedEntry>> Makers = new(StringComparer.Ordinal)
    {
        [nameof(RecordTemperature)] = () => new TemperatureEntry(),
        [nameof(WeighIn)] = () => new WeighingEntry(),
        [nameof(DipFurnace)] = () => new DipEntry(),
        [nameof(PigOut)] = () => new PigEntry(),
        [nameof(PourBack)] = () => new PourBackEntry(),
        [nameof(SendCoin)] = () => new CoinEntry(),
        [nameof(LoseCoin)] = () => new LostCoinEntry(),
        [nameof(CloseHeat)] = () => new CloseEntry(),
        [nameof(AbandonPocket)] = () => new AbandonEntry(),
        [nameof(RecordTap)] = () => new TapEntry(),
        [nameof(EndReaction)] = () => new ReactionEntry(),
        [nameof(UndoReaction)] = () => new UndoReactionEntry(),
        [nameof(DoseMagnesium)] = () => new DoseEntry(),
        [nameof(RecordMould)] = () => new MouldEntry(),
        [nameof(RecordRest)] = () => new RestEntry(),
        [nameof(RecordInoculation)] = () => new InoculationEntry(),
        [nameof(TakeBack)] = () => new TakeBackEntry(),
        [nameof(RecordSample)] = () => new SampleEntry([]),
    };

    public static IEnumerable<string> Names => Makers.Keys;

    /// <summary>An entry without a text.</summary>
    /// <exception cref="BadHttpRequestException">There is none of this name.</exception>
    public static TypedEntry Make(string name) => Makers.TryGetValue(name, out var make) ? make() : throw new BadHttpRequestException($"There is no entry {name}.");
}
