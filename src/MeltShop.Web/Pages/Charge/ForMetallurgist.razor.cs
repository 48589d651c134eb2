using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>What only the metallurgist changes: confidence, what else counts, rooms, and bounds on kinds of material.</summary>
public sealed partial class ForMetallurgist
{
    [Parameter, EditorRequired]
    public ChargeDraft Draft { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    [Parameter]
    public EventCallback Changed { get; set; }

    private WishesDraft Wishes => Draft.Wishes;

    private string Words(string group) => KindText.Of(group, Text, YardText);
}
