using MeltShop.Records.Reading.Importing;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.Import;

/// <summary>The files that came in, with what was refused of each.</summary>
public sealed partial class FileTable
{
    private long? open;

    [Parameter, EditorRequired]
    public IReadOnlyList<ImportedFileView> Files { get; set; } = [];

    /// <summary>An instant in the site's time.</summary>
    [Parameter, EditorRequired]
    public Func<DateTimeOffset, string> When { get; set; } = null!;

    private void Toggle(long id) => open = open == id ? null : id;
}
