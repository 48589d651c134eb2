using MeltShop.Metallurgy;
using MeltShop.Operations.Importing;
using MeltShop.Operations.Importing.Files;
using MeltShop.Operations.Importing.Maps;
using MeltShop.Operations.Importing.Taking;
using MeltShop.Records.Importing;
using MeltShop.Records.Reading.Importing;
using MeltShop.Records.Writing;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Watching;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace MeltShop.Web.Pages.Import;

/// <summary>A file is chosen, looked at, and taken in when somebody accepts what the preview shows.</summary>
public sealed partial class ImportList
{
    internal const string RefusedInAddress = "refused";

    private readonly EntryForm form = new();
    private readonly TextEntry map;
    private byte[]? bytes;
    private readonly Drawn<ImportPreview> accept;
    private int choice, files, looks;
    private string name = "";
    private bool isReading;
    private ImportPreview? preview;
    private IReadOnlyList<RefusedFile> refused = [];
    private ImportSamples.Result? result;

    public ImportList()
    {
        map = form.Choice("map", isRequired: true);
        accept = new(Accept);
    }

    /// <summary>The file of which the refused rows are shown.</summary>
    [SupplyParameterFromQuery(Name = RefusedInAddress)]
    public long? OpenedInAddress { get; set; }

    [Inject]
    private ImportPage Page { get; set; } = null!;

    [Inject]
    private ImportDesk Desk { get; set; } = null!;

    [Inject]
    private ImportSamples Operation { get; set; } = null!;

    [Inject]
    private SaveImportMap MapOperation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    [Inject]
    private RefusedFiles Refused { get; set; } = null!;

    private IEnumerable<Choice> Maps => View!.Maps.Where(m => m.IsActive).Select(m => new Choice(m.Name, m.Name));

    protected override async Task<ImportView?> Read(CancellationToken ct)
    {
        refused = Refused.Load();
        return await Page.Load(ct);
    }

    protected override bool IsEmpty(ImportView view) => view.Maps.Count == 0 && view.Files.Count == 0 && refused.Count == 0;

    protected override bool Concerns(ChangeNotice change) => change.Kind is ChangeKind.Import or ChangeKind.Instrument;

    protected override void Arrived(ImportView view)
    {
        if (map.Value is null && Maps.ToList() is [var only]) map.Showing(only.Value);
    }

    private async Task Choose(InputFileChangeEventArgs chosen)
    {
        var mine = ++files;
        looks++;
        (name, preview, result, bytes, isReading) = (chosen.File.Name, null, null, null, false);
        form.Open();
        if (chosen.File.Size > FileBounds.MostBytes)
        {
            form.Find([new Finding("file", "importFile.tooLarge", FileBounds.MostBytes / 1024 / 1024)]);
            return;
        }

        isReading = true;
        StateHasChanged();
        await using var stream = chosen.File.OpenReadStream(FileBounds.MostBytes, Leaving);
        using var content = new MemoryStream();
        await stream.CopyToAsync(content, Leaving);
        if (mine != files) return; // another was chosen meanwhile
        bytes = content.ToArray();
        await Look();
    }

    /// <summary>Reads the file anew by the map that is chosen now. Where two looks overtake each other the later one counts.</summary>
    private async Task Look()
    {
        var mine = ++looks;
        (preview, isReading) = (null, true);
        if (bytes is not null && View!.Maps.FirstOrDefault(m => m.Name == map.Value) is { } chosen)
        {
            var looked = await Desk.Look(chosen.Id, bytes, Leaving);
            if (mine != looks) return;
            form.Find(looked.Findings);
            if (looked.Succeeded) preview = looked.Value;
        }

        isReading = false;
    }

    private async Task Accept(ImportPreview seen)
    {
        if (!ReferenceEquals(seen, preview))
        {
            if (preview is not null) form.Find([new Finding("", Drawn<ImportPreview>.Code)]);
            return;
        }

        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, seen.Taking(made.Key, made.ObservedAt, ImportWay.Page, name)));
        if (outcome?.Succeeded != true) return;
        (result, preview, bytes) = (outcome.Value, null, null);
        choice++; // the field is empty for the next file: this one is not to be kept for later
        await Reload();
    }
}
