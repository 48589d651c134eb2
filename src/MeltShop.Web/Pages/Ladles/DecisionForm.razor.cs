using MeltShop.Operations;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Limits;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>
/// Release, hold or scrap. A release shows once more what was seen, asks for the password, and is never made from a prediction. What is decided is decided
/// on what was seen: a release on what stood there when it was asked for, the others on what was shown when they were pressed.
/// </summary>
public sealed partial class DecisionForm
{
    private readonly EntryForm form = new();
    private readonly TextEntry reason;
    private readonly TextEntry password;
    private readonly Drawn<(Guid Version, long? SampleId)> release, hold, scrap;
    private ((Guid Version, long? SampleId) Of, string Words)? asked;
    private (CastingVerdict, (Guid, long?))? decided;

    public DecisionForm()
    {
        (reason, password) = (form.Words("reason"), form.Words("password"));
        release = new(seen => Decide(CastingVerdict.Release, seen));
        hold = new(seen => Decide(CastingVerdict.Hold, seen));
        scrap = new(seen => Decide(CastingVerdict.Scrap, seen));
    }

    [Parameter, EditorRequired]
    public LadleContent View { get; set; } = null!;

    [Parameter, EditorRequired]
    public Acting Acting { get; set; } = null!;

    [Inject]
    private DecideCastings Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    /// <summary>Anybody at the ladle may hold; release and scrap are for the metallurgist and the inspector.</summary>
    private bool MayRelease => Acting.HoldsAny(DecideCastings.ReleaseRoles);

    private TreatedLadleView Treated => View.Ladle.Treated!;

    private (Guid Version, long? SampleId) Now => (Treated.Version, View.LastMetal?.Id);

    private string Seen
    {
        get
        {
            var outside = View.Verdicts.Where(v => v.Standing != WindowStanding.Inside).Select(v => v.Quantity).ToList();
            return outside.Count == 0 ? Text["SeenIn"] : Text["SeenOut", QuantityText.Names(LimitText, outside)];
        }
    }

    private void Ask() => asked = (Now, Seen);

    private async Task Decide(CastingVerdict verdict, (Guid Version, long? SampleId) seen)
    {
        if (form.IsBusy || decided == (verdict, seen)) return; // one press, made twice
        if (form.IsAccepted) form.Open();
        var signed = verdict == CastingVerdict.Release ? password.Text : null;
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, Treated.Id, seen.Version, verdict, seen.SampleId, reason.Value) { Password = signed }));
        password.Showing(null);
        if (form.At("password") is null) asked = null; // anything else is answered elsewhere
        if (outcome?.Succeeded != true) return;
        decided = (verdict, seen);
        reason.Showing(null);
    }
}
