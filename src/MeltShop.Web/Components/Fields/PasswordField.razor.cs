using Microsoft.AspNetCore.Components;

namespace MeltShop.Web.Components.Fields;

/// <summary>The password of who is signed in, asked for again. It is handed to the operation and kept nowhere.</summary>
public sealed partial class PasswordField
{
    private readonly string id = FieldFrame.NewId();

    [Parameter, EditorRequired]
    public TextEntry Entry { get; set; } = null!;

    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    [Parameter]
    public string? Help { get; set; }

    private void Type(string? typed) => Entry.Text = typed ?? "";
}
