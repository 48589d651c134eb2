using System.Globalization;
using MeltShop.Operations.People;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.Texts;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.People;

/// <summary>Takes somebody into the shop, with a password to start with.</summary>
public sealed partial class PersonForm
{
    private readonly EntryForm form = new();
    private readonly TextEntry displayName, userName, culture, password, roles;
    private bool isOpen;

    public PersonForm()
    {
        (displayName, userName) = (form.Words("displayName", isRequired: true), form.Words("userName", isRequired: true));
        (culture, password) = (form.Choice("culture", isRequired: true), form.Words("password", isRequired: true));
        roles = form.Choice("personRoles", isRequired: true);
    }

    /// <summary>After it was recorded, with what the person has to be told.</summary>
    [Parameter]
    public EventCallback<GivenPassword> Saved { get; set; }

    [Inject]
    private AddPerson Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private static IEnumerable<Choice> Cultures => LanguageServices.Spoken.Select(CultureInfo.GetCultureInfo).Select(culture => new Choice(culture.Name, culture.NativeName));

    private void Open()
    {
        isOpen = true;
        form.Open();
        foreach (var field in new[] { displayName, userName, password, roles }) field.Showing(null);
        culture.Showing(CultureInfo.CurrentCulture.Name);
    }

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, userName.Value!, displayName.Value!, RoleTicks.Chosen(roles), culture.Value!, IsStartPassword: true) { Password = password.Value! }));
        if (outcome?.Succeeded != true) return;
        isOpen = false;
        await Saved.InvokeAsync(new(displayName.Value!, userName.Value!, password.Value!));
    }
}
