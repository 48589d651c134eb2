using MeltShop.Operations;
using MeltShop.Operations.Laboratory;
using MeltShop.Operations.Ladles;
using MeltShop.Records.Ladles;
using MeltShop.Records.Reading.Ladles;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Components.Limits;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Ladles;

/// <summary>Release, hold or scrap. A release shows once more what was seen, asks for the password, and is never made from a prediction.</summary>
public sealed partial class DecisionForm
{
    private readonly EntryForm form = new();
    private readonly TextEntry reason;
    private readonly TextEntry password;
    private bool isAsking;

    public DecisionForm() => (reason, password) = (form.Words("reason"), form.Words("password"));

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

    private string Seen
    {
        get
        {
            var outside = View.Verdicts.Where(v => v.Standing != WindowStanding.Inside).Select(v => v.Quantity).ToList();
            return outside.Count == 0 ? Text["SeenIn"] : Text["SeenOut", QuantityText.Names(LimitText, outside)];
        }
    }

    private async Task Decide(CastingVerdict verdict)
    {
        if (form.IsAccepted) form.Open();
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, Treated.Id, Treated.Version, verdict, View.LastMetal?.Id, reason.Value) { Password = verdict == CastingVerdict.Release ? password.Text : null }));
        password.Showing(null);
        isAsking = form.At("password") is not null; // anything else is answered elsewhere
        if (outcome?.Succeeded == true) reason.Showing(null);
    }
}
