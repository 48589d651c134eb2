using System.Globalization;
using MeltShop.Records.Reading.Importing;
using MeltShop.Web.Components.Reading;
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

    /// <summary>The file of which the refused rows are shown when the page comes.</summary>
    [Parameter]
    public long? OpenInAddress { get; set; }

    [Inject]
    private QuietAddress Address { get; set; } = null!;

    protected override void OnInitialized() => open = OpenInAddress;

    private Task Toggle(long id)
    {
        open = open == id ? null : id;
        return Address.Say(ImportList.RefusedInAddress, open is null ? [] : [id.ToString(CultureInfo.InvariantCulture)]);
    }
}
