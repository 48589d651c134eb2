using MeltShop.Records.Reading.Ladles;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Castings;

/// <summary>A decision about castings: what, who, when, and what was seen.</summary>
public sealed partial class DecisionWords
{
    [Parameter, EditorRequired]
    public CastingDecisionView Decision { get; set; } = null!;
}
