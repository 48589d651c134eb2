using MeltShop.Metallurgy.Statistics;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Laboratory;

/// <summary>Which patterns a chart looks for, with what each costs in false alarms. The choice stays in the address.</summary>
public sealed partial class RuleChoice
{
    [Parameter, EditorRequired]
    public IReadOnlySet<RunRule> Rules { get; set; } = RunRules.Usual;

    [Inject]
    private NavigationManager Addresses { get; set; } = null!;

    private void Turn(RunRule rule)
    {
        var rules = Rules.ToHashSet();
        if (!rules.Remove(rule)) rules.Add(rule);
        Addresses.NavigateTo(Addresses.GetUriWithQueryParameter("rules", ChartRules.Write(rules)));
    }
}
