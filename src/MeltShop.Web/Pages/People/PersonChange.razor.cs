using MeltShop.Operations.People;
using MeltShop.Records.Reading.People;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.People;

/// <summary>Says anew what somebody is called and may do, that they have left, or what their password is.</summary>
public sealed partial class PersonChange
{
    private readonly EntryForm form = new(), second = new();
    private readonly TextEntry displayName, use, roles, password;
    private PersonStanding seen = null!;
    private bool isOutdated;

    public PersonChange()
    {
        (displayName, use) = (form.Words("displayName", isRequired: true), form.Choice("isActive", isRequired: true));
        (roles, password) = (form.Choice("personRoles", isRequired: true), second.Words("password", isRequired: true));
    }

    [Parameter, EditorRequired]
    public PersonAccount Person { get; set; } = null!;

    /// <summary>After something was recorded, or somebody else was faster: the page has to read again.</summary>
    [Parameter]
    public EventCallback Saved { get; set; }

    /// <summary>After a password was recorded, with what the person has to be told.</summary>
    [Parameter]
    public EventCallback<GivenPassword> Given { get; set; }

    [Parameter]
    public EventCallback Left { get; set; }

    [Inject]
    private SetPerson Set { get; set; } = null!;

    [Inject]
    private GivePassword Give { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private IEnumerable<Choice> Uses => [new(bool.TrueString, Text["WorksHere"]), new(bool.FalseString, Text["HasLeft"])];

    protected override void OnInitialized()
    {
        seen = Person.Standing;
        displayName.Showing(seen.Name);
        use.Showing(seen.IsActive.ToString());
        roles.Showing(string.Join(' ', seen.Roles));
    }

    /// <summary>After a refusal because somebody else was faster, what the page shows now is what they see.</summary>
    protected override void OnParametersSet()
    {
        if (isOutdated && !Person.Standing.IsLike(seen)) (seen, isOutdated) = (Person.Standing, false);
    }

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Set.Run(made.By, new(
            made.Key, made.ObservedAt, Person.Id, seen, displayName.Value!, RoleTicks.Chosen(roles), bool.Parse(use.Value!))));
        if (outcome is null) return;
        isOutdated = outcome.IsStale();
        await Saved.InvokeAsync();
        if (outcome.Succeeded) await Left.InvokeAsync();
    }

    private async Task GiveOne()
    {
        var outcome = await HandingIn.Send(second, made => Give.Run(made.By, new(made.Key, made.ObservedAt, Person.Id) { Password = password.Value! }));
        if (outcome?.Succeeded == true) await Given.InvokeAsync(new(Person.Standing.Name, Person.UserName, password.Value!));
    }
}
