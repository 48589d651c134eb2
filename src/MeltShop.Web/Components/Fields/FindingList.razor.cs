using MeltShop.Metallurgy;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Fields;

/// <summary>Above a form: that it was not saved, once somebody tried to, and what belongs to none of the fields that are seen.</summary>
public sealed partial class FindingList
{
    [Parameter, EditorRequired]
    public EntryForm Form { get; set; } = null!;

    /// <summary>Fields that the form has and does not show here: what is found against them is listed too.</summary>
    [Parameter]
    public IReadOnlyList<FieldEntry> Undrawn { get; set; } = [];

    private IEnumerable<Finding> Listed => Form.Findings.Where(finding => Form.Fields.All(entry => entry.Path != finding.Path || Undrawn.Contains(entry)));
}
