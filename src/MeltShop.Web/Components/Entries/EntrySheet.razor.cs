using System.Text.Json;
using MeltShop.Operations;
using MeltShop.Records.Reading.Drafts;
using MeltShop.Records.Writing;
using MeltShop.Web.Api.Entries;
using MeltShop.Web.SignIn;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Entries;

/// <summary>
/// The form around an entry. The script of the entry path hands it in, so that a press is kept where the connection is not; what
/// it was answered comes back as an event. Who may not hand it in does not see it. Without the script the form hands itself in, to the same desk. What is typed at its
/// subject is shown as it is typed, with who did.
/// </summary>
public sealed partial class EntrySheet : IDisposable
{
    private readonly CancellationTokenSource leaving = new();
    private DraftBoard board = null!;
    private Acting? acting;
    private TypedEntry? shown;

    [Parameter, EditorRequired]
    public TypedEntry Entry { get; set; } = null!;

    /// <summary>What it is, for the list of what is not yet at the server.</summary>
    [Parameter, EditorRequired]
    public string Title { get; set; } = "";

    [Parameter, EditorRequired]
    public string TestId { get; set; } = "";

    [Parameter]
    public string? Class { get; set; }

    /// <summary>The words for a field's path, where its texts lie as drafts.</summary>
    [Parameter]
    public Func<string, string> Name { get; set; } = path => path;

    /// <summary>Of a form that stays open: the field, if any, whose text is the next entry's too. The others are emptied once it was accepted; null where it closes.</summary>
    [Parameter]
    public string? Keeps { get; set; }

    /// <summary>For a form that offers what is entered next: its next entry was begun, and is of what stood in the other fields then.</summary>
    [Parameter]
    public EventCallback<EntryBegunEventArgs> Begun { get; set; }

    /// <summary>After it was accepted; where the answer came late, only if the next entry was not begun in the form meanwhile.</summary>
    [Parameter]
    public EventCallback Accepted { get; set; }

    /// <summary>Instead, where what was handed in stands in the fields no more: it was accepted late, or the form stays open.</summary>
    [Parameter]
    public EventCallback<EntryAnsweredEventArgs> AcceptedLate { get; set; }

    /// <summary>After it was accepted, soon or late and whatever was begun in the form meanwhile: what was handed in, by field.</summary>
    [Parameter]
    public EventCallback<IReadOnlyDictionary<string, string>> Kept { get; set; }

    /// <summary>After something was found against it.</summary>
    [Parameter]
    public EventCallback Refused { get; set; }

    [Parameter, EditorRequired]
    public RenderFragment? ChildContent { get; set; }

    [Inject]
    private EntryDesk Desk { get; set; } = null!;

    [Inject]
    private DraftRows Drafts { get; set; } = null!;

    [Inject]
    private ChangeNotices Notices { get; set; } = null!;

    [Inject]
    private ActingPerson Person { get; set; } = null!;

    [Inject]
    private ILogger<EntrySheet> Log { get; set; } = null!;

    private bool IsOffered => acting is null || Desk.May(acting, Entry);

    private IEnumerable<IGrouping<string, DraftView>> Others => board.Lying.Where(draft => draft.PersonId != acting?.PersonId).GroupBy(draft => draft.Person);

    protected override async Task OnInitializedAsync()
    {
        board = new(Entry);
        acting = await Person.FindAsync();
        if (Entry.DraftSubject is not null) _ = Follow(Notices.Listen(leaving.Token));
    }

    protected override async Task OnParametersSetAsync()
    {
        Entry.Form.Draw();
        if (ReferenceEquals(shown, Entry)) return;
        shown = Entry;
        board = new(Entry);
        await Lay();
    }

    public void Dispose()
    {
        leaving.Cancel();
        leaving.Dispose();
    }

    private static string Json<TValue>(IReadOnlyDictionary<string, TValue> values) => JsonSerializer.Serialize(values);

    private async Task Lay()
    {
        if (Entry.DraftSubject is not { } subject) return;
        try
        {
            board.Lay(await Drafts.Load(subject, leaving.Token));
        }
        catch (OperationCanceledException) when (leaving.IsCancellationRequested)
        {
        }
#pragma warning disable CA1031 // whatever kept them from being read: the form goes on without, until somebody types again
        catch (Exception fault)
#pragma warning restore CA1031
        {
            Log.LogError(fault, "What others typed could not be read");
        }
    }

    private async Task Follow(IAsyncEnumerable<IReadOnlyList<ChangeNotice>> bundles)
    {
        await foreach (var changes in bundles)
        {
            if (!changes.Any(change => change == ChangeNotice.Anything || change.Kind is ChangeKind.Draft)) continue;
            await InvokeAsync(async () =>
            {
                await Lay();
                StateHasChanged();
            });
        }
    }

    private async Task Submit()
    {
        if (Entry.Form.IsBusy || Entry.Form.IsAccepted) return;
        var findings = (await Desk.Take(acting!, Entry)).Findings;
        if (findings.Count == 0) await Keep(null);
        await Answer(findings);
    }

    private async Task Told(EntryAnsweredEventArgs told)
    {
        if (told.Findings.Count == 0) await Keep(told.Late ?? told.Handed);
        var isOfThis = told.Late is null || !told.IsTouched;
        if (told.Late is null || !AcceptedLate.HasDelegate)
        {
            if (isOfThis) await Answer([.. told.Findings.Select(finding => finding.Finding)]);
            return;
        }

        if (isOfThis) Entry.Form.Answer([]);
        await AcceptedLate.InvokeAsync(told);
    }

    private Task Keep(IReadOnlyDictionary<string, string>? handedIn) =>
        Kept.HasDelegate ? Kept.InvokeAsync(handedIn ?? Entry.Form.Fields.ToDictionary(field => field.Path, field => field.Text)) : Task.CompletedTask;

    private async Task Answer(IReadOnlyList<Metallurgy.Finding> findings)
    {
        Entry.Form.Answer(findings);
        await (findings.Count == 0 ? Accepted : Refused).InvokeAsync();
    }
}
