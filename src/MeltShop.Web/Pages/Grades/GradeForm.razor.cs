using MeltShop.Operations;
using MeltShop.Operations.Grades;
using MeltShop.Records.Grades;
using MeltShop.Records.Reading.Grades;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Grades;

/// <summary>Where a grade's windows come from, what it is called, and whether it is used.</summary>
public sealed partial class GradeForm
{
    private readonly EntryForm form = new();
    private readonly SeenVersion seen = new();
    private readonly TextEntry code, family, source;
    private bool isOpen;

    public GradeForm() => (code, family, source) = (form.Words("code", isRequired: true), form.Choice("family", isRequired: true), form.Words("source", isRequired: true));

    [Parameter, EditorRequired]
    public GradeView Grade { get; set; } = null!;

    [Parameter, EditorRequired]
    public bool IsOffered { get; set; }

    /// <summary>The grade is another now: the page has to read again.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private SetGrade Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    private IEnumerable<Choice> Families => Enum.GetNames<IronFamily>().Select(value => new Choice(value, Text["Family." + value]));

    protected override void OnParametersSet() => seen.Arrived(Grade.Version);

    private void Open()
    {
        form.Open();
        seen.Open(Grade.Version);
        code.Showing(Grade.Code);
        family.Showing(Grade.Family.ToString());
        source.Showing(Grade.Source);
        isOpen = true;
    }

    private Task<Outcome<Guid>> Say(EntryMade made, bool isActive) =>
        Operation.Run(made.By, new(made.Key, made.ObservedAt, Grade.Id, Grade.Version, Grade.Code, Grade.Family, Grade.Source, isActive));

    private async Task Save()
    {
        var outcome = await HandingIn.Send(form, made => Operation.Run(made.By, new(
            made.Key, made.ObservedAt, Grade.Id, seen.Value, code.Value!, Enum.Parse<IronFamily>(family.Value!), source.Value!, Grade.IsActive)));
        if (outcome?.IsStale() == true) seen.Outdated();
        if (outcome?.Succeeded == true) isOpen = false;
        if (outcome is not null) await Changed.InvokeAsync();
    }
}
