using MeltShop.Metallurgy.Grades;
using MeltShop.Operations.Castings;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Castings;

/// <summary>A test piece against its grade; what is asked for and not tested stands there as such.</summary>
public sealed partial class TestPieceCard
{
    [Parameter, EditorRequired]
    public TestedPiece Tested { get; set; } = null!;

    /// <summary>Labels of the moulds of the ladle.</summary>
    [Parameter]
    public IReadOnlyList<string> Moulds { get; set; } = [];

    /// <summary>Whether the person may record results.</summary>
    [Parameter]
    public bool IsOffered { get; set; }

    private static string? Tag(PropertyStanding standing) => standing switch
    {
        PropertyStanding.Fails => "tag-wrong",
        PropertyStanding.NotTested => "tag-watch",
        _ => null,
    };
}
