using MeltShop.Metallurgy;
using MeltShop.Metallurgy.Route;
using MeltShop.Records.Reading.Charge;
using MeltShop.Records.Reading.Yard;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>
/// What is refused of materials and limits while there is no plan whose rows would hold the fields, as after the page was read anew: the fields stand here.
/// </summary>
public sealed partial class MarkedChoices
{
    [Parameter, EditorRequired]
    public ChargeView View { get; set; } = null!;

    [Parameter, EditorRequired]
    public ChargeDraft Draft { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    [Parameter]
    public EventCallback Changed { get; set; }

    private IEnumerable<(MaterialView Material, MaterialDraft Draft)> Materials => View.Materials
        .Where(material => Draft.Form.Findings.Any(finding => IsOf(finding, "materials", material.Code))).Select(material => (material, Draft.Material(material.Code)));

    private IEnumerable<string> Quantities => Draft.Form.Findings.Select(finding => finding.Path.Split('.')).Where(path => path is ["limits", _, _])
        .Select(path => path[1]).Where(name => WindowQuantity.Find(name) is not null).Distinct();

    /// <summary>Those of the basics, and of what is for the metallurgist, stand at their fields beside this; what is drawn nowhere is at least said.</summary>
    private IEnumerable<Finding> Others => Draft.Form.Findings.Where(finding =>
        finding.Path.Contains('.', StringComparison.Ordinal) && finding.Path.Split('.')[0] is not ("limits" or "materials" or "groups" or "wishes"));

    private static bool IsOf(Finding finding, string group, string name) => finding.Path.StartsWith($"{group}.{name}.", StringComparison.Ordinal);
}
