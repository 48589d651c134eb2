using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Fields;

/// <summary>Above a form: that it was not saved, once somebody tried to, and what belongs to none of its fields.</summary>
public sealed partial class FindingList
{
    [Parameter, EditorRequired]
    public EntryForm Form { get; set; } = null!;
}
