using MeltShop.Records.Reading.Yard;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Yard;

/// <summary>What kind of source an analysis has; "from memory" is marked, for nobody has checked it.</summary>
public sealed partial class SourceTag
{
    [Parameter, EditorRequired]
    public MaterialAnalysisView? Analysis { get; set; }

    private bool NeedsCare => Analysis?.SourceKind is "memory";
}
