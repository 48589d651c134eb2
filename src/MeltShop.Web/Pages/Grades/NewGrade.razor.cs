using MeltShop.Metallurgy;
using MeltShop.Operations;
using MeltShop.Operations.Grades;
using MeltShop.Records.Grades;
using MeltShop.Web.Components.Fields;
using MeltShop.Web.SignIn;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Grades;

/// <summary>Takes a grade into the shop, with its windows; its treatment is said on its own page.</summary>
public sealed partial class NewGrade
{
    private readonly EntryForm form = new();
    private readonly TextEntry code, family, source;
    private readonly List<WindowRow> furnace, poured;
    private bool isOffered;

    public NewGrade()
    {
        (code, family, source) = (form.Words("code", isRequired: true), form.Choice("family", isRequired: true), form.Words("source", isRequired: true));
        // What nearly every grade limits; of a row that stays empty nothing is recorded.
        (furnace, poured) = (Offered("C", "Si", "Mn", "P", "S"), Offered("C", "Si", "Mn", "Mg"));
    }

    [Inject]
    private AddGrade Operation { get; set; } = null!;

    [Inject]
    private HandingIn HandingIn { get; set; } = null!;

    [Inject]
    private ActingPerson Person { get; set; } = null!;

    [Inject]
    private NavigationManager Addresses { get; set; } = null!;

    private IEnumerable<Choice> Families => Enum.GetNames<IronFamily>().Select(value => new Choice(value, Text["Family." + value]));

    protected override async Task OnInitializedAsync() => isOffered = (await Person.FindAsync())?.HoldsAny(Operation.Roles) == true;

    private List<WindowRow> Offered(params string[] quantities) => [.. quantities.Select(quantity => new WindowRow(form, quantity))];

    private async Task Save()
    {
        List<(WindowRow Row, WindowStage Stage)> said =
        [
            .. furnace.Where(row => row.IsSaid).Select(row => (row, WindowStage.Furnace)), .. poured.Where(row => row.IsSaid).Select(row => (row, WindowStage.Poured)),
        ];
        var outcome = await HandingIn.Send(form, async made => Placed(
            await Operation.Run(made.By, new(
                made.Key, made.ObservedAt, code.Value!, Enum.Parse<IronFamily>(family.Value!), source.Value!, [.. said.Select(one => one.Row.Input(one.Stage))], null)),
            [.. said.Select(one => one.Row)]));
        if (outcome?.Succeeded == true) Addresses.NavigateTo($"/grades/{outcome.Value}");
    }

    /// <summary>What was found at <c>windows[2].least</c> belongs to the field of the third row that was handed in.</summary>
    private static Outcome<long> Placed(Outcome<long> outcome, List<WindowRow> rows) =>
        outcome.Succeeded ? outcome : Outcome<long>.Refused([.. outcome.Findings.Select(finding => Placed(finding, rows))]);

    private static Finding Placed(Finding finding, List<WindowRow> rows)
    {
        var place = rows.FindIndex(row => finding.Path.StartsWith($"windows[{rows.IndexOf(row)}]", StringComparison.Ordinal));
        if (place < 0) return finding;
        var field = finding.Path[$"windows[{place}]".Length..];
        return finding with { Path = rows[place].Path + (field.Length == 0 ? ".least" : field) };
    }
}
