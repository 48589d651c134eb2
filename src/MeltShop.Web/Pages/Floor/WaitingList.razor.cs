using MeltShop.Records.People;
using MeltShop.Records.Reading.Floor;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Floor;

/// <summary>What waits for the person at this screen, the longest first.</summary>
public sealed partial class WaitingList
{
    private static readonly Dictionary<WaitingFor, IReadOnlyList<string>> Whom = new()
    {
        [WaitingFor.Charging] = [Role.Melter],
        [WaitingFor.Correction] = [Role.Melter],
        [WaitingFor.Tap] = [Role.Melter],
        [WaitingFor.ReactionEnd] = [Role.Melter],
        [WaitingFor.Rest] = [Role.Melter, Role.Metallurgist, Role.Supervisor],
        [WaitingFor.BathSample] = [Role.Metallurgist],
        [WaitingFor.LastMetal] = [Role.Metallurgist],
        [WaitingFor.Decision] = [Role.Metallurgist, Role.Inspector, Role.Supervisor],
    };

    private IReadOnlyList<WaitingRow> mine = [];

    /// <summary>Everything that waits, whoever it waits for.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<WaitingRow> Rows { get; set; } = [];

    [Parameter, EditorRequired]
    public IReadOnlyCollection<string> Roles { get; set; } = [];

    protected override void OnParametersSet() => mine = [.. Rows.Where(row => Whom[row.For].Any(Roles.Contains))];
}
