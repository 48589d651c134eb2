using MeltShop.Web.Watching;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Import;

/// <summary>Files of the watched folder that were not taken in, each with its report.</summary>
public sealed partial class RefusedFileList
{
    /// <summary>The latest first, at most one more than are shown.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<RefusedFile> Files { get; set; } = [];
}
