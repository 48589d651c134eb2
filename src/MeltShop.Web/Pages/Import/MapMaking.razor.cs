using MeltShop.Metallurgy;
using MeltShop.Operations;
using MeltShop.Operations.Importing;
using MeltShop.Operations.Importing.Files;
using MeltShop.Operations.Importing.Maps;
using MeltShop.Records.Laboratory;
using MeltShop.Records.Reading.Importing;
using MeltShop.Records.Reading.Laboratory;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace MeltShop.Web.Pages.Import;

/// <summary>Somebody points at a sample file and says what its columns hold.</summary>
public sealed partial class MapMaking
{
    private readonly EntryForm form = new();
    private readonly MapDraft draft;
    private readonly SeenVersion seen = new();
    private byte[]? bytes;
    private long? shown;

    public MapMaking() => draft = new(form);

    /// <summary>The map that is changed; none for a new one.</summary>
    [SupplyParameterFromQuery(Name = "of")]
    public long? MapId { get; set; }

    [Inject]
    private ImportPage Maps { get; set; } = null!;

    [Inject]
    private NavigationManager Addresses { get; set; } = null!;

    [Inject]
    private InstrumentsPage Page { get; set; } = null!;

    [Inject]
    private SaveImportMap Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private IEnumerable<Choice> Separators => MapDraft.Separators.Keys.Select(name => new Choice(name, Text["Separator." + name]));

    private IEnumerable<Choice> Kinds => Enum.GetValues<SampleKind>().Select(kind => new Choice(kind.ToString(), Text["Kind." + kind]));

    protected override async Task<MapScreen?> Read(CancellationToken ct)
    {
        var kept = MapId is { } id ? (await Maps.Load(ct)).Maps.SingleOrDefault(m => m.Id == id) : null;
        if (MapId is not null && kept is null) return null;
        return new([.. (await Page.Load(ct)).Where(i => i.IsActive).Select(i => new Choice(i.Code, i.Name))], kept);
    }

    /// <summary>What was typed stays when the records change underneath.</summary>
    protected override void Arrived(MapScreen view)
    {
        if (view.Kept is not { } kept) return;
        seen.Arrived(kept.Version);
        if (shown == kept.Id) return;
        shown = kept.Id;
        seen.Open(kept.Version);
        draft.Show(kept.Name, RecordsJson.Value<ColumnMap>(kept.Definition)!);
    }

    protected override bool IsEmpty(MapScreen view) => view.Instruments.Count == 0;

    protected override bool Concerns(ChangeNotice change) => change.Kind is ChangeKind.Instrument or ChangeKind.Import;

    private IEnumerable<Choice> Choices<TEnum>()
        where TEnum : struct, Enum => Enum.GetNames<TEnum>().Select(name => new Choice(name, Text[$"{typeof(TEnum).Name switch { nameof(RowLayout) => "Layout", nameof(TextCoding) => "Coding", var other => other }}.{name}"]));

    private async Task Choose(InputFileChangeEventArgs chosen)
    {
        bytes = null;
        if (chosen.File.Size > FileBounds.MostBytes)
        {
            form.Find([new Finding("file", "importFile.tooLarge", FileBounds.MostBytes / 1024 / 1024)]);
            return;
        }

        await using var stream = chosen.File.OpenReadStream(FileBounds.MostBytes, Leaving);
        using var content = new MemoryStream();
        await stream.CopyToAsync(content, Leaving);
        bytes = content.ToArray();
        if (View!.Kept is null) draft.Suggest(FileLook.LikelySeparator(bytes));
        LookAgain();
    }

    /// <summary>The columns as the file has them now; what was said of a column stays with its heading.</summary>
    private void LookAgain()
    {
        if (bytes is null || draft.HeadingNumber is not { } heading) return;
        var look = FileLook.Of(bytes, draft.SeparatorSign, draft.TextCoding);
        form.Find(look.Refusal is { } refusal ? [refusal] : []);
        draft.Show(look.Rows, heading);
    }

    private Task Save() => Keep(isActive: true);

    private Task End() => Keep(isActive: false);

    private async Task Keep(bool isActive)
    {
        var kept = View!.Kept;
        var outcome = await HandingIn.Send(
            form, made => Operation.Run(made.By, new(made.Key, made.ObservedAt, kept?.Id, kept is null ? (Guid?)null : seen.Value, draft.Name.Value!, draft.Map(), isActive)), draft.Check);
        if (outcome?.IsStale() == true)
        {
            seen.Outdated();
            await Reload();
        }

        if (outcome?.Succeeded == true && kept is not null) Addresses.NavigateTo("/import");
    }
}
