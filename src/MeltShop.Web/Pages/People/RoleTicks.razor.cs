using MeltShop.Records.People;
using MeltShop.Web.Components.Fields;
using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Pages.People;

/// <summary>What somebody may do. The field's text holds the roles, a blank between two.</summary>
public sealed partial class RoleTicks
{
    [Parameter, EditorRequired]
    public TextEntry Entry { get; set; } = null!;

    public static IReadOnlyList<string> Chosen(TextEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return entry.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
    }

    private void Tick(string role, bool isTicked) =>
        Entry.Text = string.Join(' ', Role.All.Where(one => one == role ? isTicked : Chosen(Entry).Contains(one)));
}
