using MeltShop.Operations.Charging;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Charge;

/// <summary>What a charge that was made by hand keeps, what it misses and by how much, and what it costs beside the cheapest.</summary>
public sealed partial class HandNews
{
    [Parameter, EditorRequired]
    public HandCharge Made { get; set; } = null!;

    /// <summary>Names of materials by code.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyDictionary<string, string> Names { get; set; } = new Dictionary<string, string>();

    [Parameter, EditorRequired]
    public string Currency { get; set; } = "";

    /// <summary>Of new liquid, per 1000 kg; null where no charge keeps all.</summary>
    [Parameter]
    public double? CheapestCost { get; set; }

    private MissText Words => new(Text, LimitText, YardText);

    private string NameOf(string code) => Names.GetValueOrDefault(code, code);
}
