using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Castings;

/// <summary>The fields of a test piece.</summary>
public sealed partial class TestPieceFields
{
    [Parameter, EditorRequired]
    public TestPieceDraft Draft { get; set; } = null!;
}
