using MeltShop.Operations.Heats;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Ladles;

namespace MeltShop.Web.Components.Entries;

/// <summary>What the entry path takes, by the name of its operation.</summary>
public static class EntryKinds
{
    private static readonly Dictionary<string, Kind> Kinds = new(StringComparer.Ordinal)
    {
        [nameof(RecordTemperature)] = new(() => new TemperatureEntry(), services => services.GetRequiredService<RecordTemperature>().Roles),
        [nameof(WeighIn)] = new(() => new WeighingEntry(), services => services.GetRequiredService<WeighIn>().Roles),
        [nameof(DipFurnace)] = new(() => new DipEntry(), services => services.GetRequiredService<DipFurnace>().Roles),
        [nameof(PigOut)] = new(() => new PigEntry(), services => services.GetRequiredService<PigOut>().Roles),
        [nameof(PourBack)] = new(() => new PourBackEntry(), services => services.GetRequiredService<PourBack>().Roles),
        [nameof(SendCoin)] = new(() => new CoinEntry(), services => services.GetRequiredService<SendCoin>().Roles),
        [nameof(LoseCoin)] = new(() => new LostCoinEntry(), services => services.GetRequiredService<LoseCoin>().Roles),
        [nameof(CloseHeat)] = new(() => new CloseEntry(), services => services.GetRequiredService<CloseHeat>().Roles),
        [nameof(AbandonPocket)] = new(() => new AbandonEntry(), services => services.GetRequiredService<AbandonPocket>().Roles),
        [nameof(RecordTap)] = new(() => new TapEntry(), services => services.GetRequiredService<RecordTap>().Roles),
        [nameof(EndReaction)] = new(() => new ReactionEntry(), services => services.GetRequiredService<EndReaction>().Roles),
        [nameof(UndoReaction)] = new(() => new UndoReactionEntry(), services => services.GetRequiredService<UndoReaction>().Roles),
        [nameof(DoseMagnesium)] = new(() => new DoseEntry(), services => services.GetRequiredService<DoseMagnesium>().Roles),
        [nameof(RecordMould)] = new(() => new MouldEntry(), services => services.GetRequiredService<RecordMould>().Roles),
        [nameof(RecordRest)] = new(() => new RestEntry(), services => services.GetRequiredService<RecordRest>().Roles),
        [nameof(RecordInoculation)] = new(() => new InoculationEntry(), services => services.GetRequiredService<RecordInoculation>().Roles),
        [nameof(TakeBack)] = new(() => new TakeBackEntry(), services => services.GetRequiredService<TakeBack>().Roles),
        [nameof(RecordControlSample)] = new(() => new ControlSampleEntry([]), services => services.GetRequiredService<RecordControlSample>().Roles),
        [nameof(RecordSample)] = new(() => new SampleEntry([]), services => services.GetRequiredService<RecordSample>().Roles),
    };

    public static IEnumerable<string> Names => Kinds.Keys;

    /// <summary>An entry without a text.</summary>
    /// <exception cref="BadHttpRequestException">There is none of this name.</exception>
    public static TypedEntry Make(string name) => Of(name).Make();

    /// <summary>The roles of its operation.</summary>
    /// <exception cref="BadHttpRequestException">There is none of this name.</exception>
    public static IReadOnlyList<string> Roles(string name, IServiceProvider services) => Of(name).Roles(services);

    private static Kind Of(string name) => Kinds.TryGetValue(name, out var kind) ? kind : throw new BadHttpRequestException($"There is no entry {name}.");

    private sealed record Kind(Func<TypedEntry> Make, Func<IServiceProvider, IReadOnlyList<string>> Roles);
}
