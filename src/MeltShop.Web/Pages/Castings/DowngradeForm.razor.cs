using System.Globalization;
using MeltShop.Operations.Castings;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Castings;

/// <summary>Held castings as another grade: tests that show it, a new marking, the customer's consent, the inspector's password.</summary>
public sealed partial class DowngradeForm
{
    private readonly EntryForm form = new();
    private readonly SeenVersion seen = new();
    private readonly TextEntry grade;
    private readonly TextEntry reMarking;
    private readonly TextEntry consent;
    private readonly TextEntry reason;
    private readonly TextEntry password;
    private bool isOpen;

    public DowngradeForm()
    {
        (grade, reMarking, consent) = (form.Choice("gradeId", isRequired: true), form.Words("reMarking", isRequired: true), form.Words("consent", isRequired: true));
        (reason, password) = (form.Words("reason", isRequired: true), form.Words("password", isRequired: true));
    }

    [Parameter, EditorRequired]
    public CastingsContent View { get; set; } = null!;

    [Inject]
    private DowngradeCastings Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    protected override void OnParametersSet() => seen.Arrived(View.Ladle.Treated!.Version);

    private void Open()
    {
        isOpen = true;
        seen.Open(View.Ladle.Treated!.Version);
        form.Open();
    }

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, View.Ladle.Treated!.Id, seen.Value, long.Parse(grade.Text, NumberStyles.None, CultureInfo.InvariantCulture),
            reMarking.Text, consent.Text, reason.Text) { Password = password.Text }));
        password.Showing(null);
        if (outcome is null) return;
        if (outcome.IsStale()) seen.Outdated();
        else isOpen = !outcome.Succeeded;
    }
}
