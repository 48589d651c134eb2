using MeltShop.Operations;
using MeltShop.Operations.Castings;
using MeltShop.Records.Ladles;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Castings;

/// <summary>One test unit: how it stands, and its hold, release or scrap apart from the other castings of the ladle.</summary>
public sealed partial class UnitCard
{
    private readonly EntryForm form = new();
    private readonly SeenVersion seen = new();
    private readonly TextEntry verdict;
    private readonly TextEntry reason;
    private readonly TextEntry password;
    private long? seenSampleId;
    private bool isOpen;

    public UnitCard() => (verdict, reason, password) = (form.Choice("verdict", isRequired: true), form.Words("reason", isRequired: true), form.Words("password"));

    [Parameter, EditorRequired]
    public CastingsContent View { get; set; } = null!;

    [Parameter, EditorRequired]
    public CastingUnit Unit { get; set; } = null!;

    [Parameter, EditorRequired]
    public Acting Acting { get; set; } = null!;

    [Inject]
    private DecideUnit Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private CastingVerdict? Chosen => Enum.TryParse<CastingVerdict>(verdict.Value, out var chosen) ? chosen : null;

    private bool IsOffered => Unit.Apart != CastingVerdict.Scrap && Acting.HoldsAny(Operation.Roles);

    private string Standing => Unit.Apart is { } apart ? Text["UnitStanding." + apart] : Text["UnitStanding.AsLadle", Text["State." + View.Ladle.Treated!.State].Value];

    private IEnumerable<Choice> Verdicts => new[] { CastingVerdict.Hold, CastingVerdict.Release, CastingVerdict.Scrap }
        .Where(one => one != Unit.Apart).Select(one => new Choice(one.ToString(), Text["UnitVerdict." + one]));

    protected override void OnParametersSet() => seen.Arrived(View.Ladle.Treated!.Version);

    private void Open()
    {
        isOpen = true;
        verdict.Showing(Unit.Apart == CastingVerdict.Hold ? null : nameof(CastingVerdict.Hold));
        seen.Open(View.Ladle.Treated!.Version);
        seenSampleId = View.LastMetal?.Id;
        form.Open();
    }

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, View.Ladle.Treated!.Id, seen.Value, Unit.Name, Chosen!.Value, seenSampleId, reason.Value)
        {
            Password = Chosen == CastingVerdict.Release ? password.Text : null,
        }));
        password.Showing(null);
        if (outcome is null) return;
        seenSampleId = View.LastMetal?.Id; // after a refusal the person looks at what stands there now
        if (outcome.IsStale()) seen.Outdated();
        else isOpen = !outcome.Succeeded;
    }
}
